package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import putback.angles.bounce.Decay;

/**
 * The damping of one corner or two, in the pieces that a page is set from.
 *
 * @param names what the records are called, such as left and right
 * @param figures each with a value for every record
 * @param verdict what follows from them, a sentence or two
 * @param doubts records that are rough readings
 */
public record BounceReport(List<String> names, List<Figures> figures, String verdict, List<String> doubts) {
    private static final double ALIKE = 0.9;

    /**
     * @param values one for each record
     */
    public record Figures(String name, List<String> values) {
        public Figures {
            values = List.copyOf(values);
        }
    }

    public BounceReport {
        names = List.copyOf(names);
        figures = List.copyOf(figures);
        doubts = List.copyOf(doubts);
    }

    /**
     * @param decays one or two
     * @param names of the records, as many
     * @param inTime whether the second is the same corner after work, and not the other side
     */
    public static BounceReport of(List<Decay> decays, List<String> names, boolean inTime) {
        List<Figures> figures = new ArrayList<>();
        figures.add(row("damping ratio", decays, one -> figure("%.3f", one.dampingRatio())));
        figures.add(row("swings a second", decays, one -> figure("%.2f", one.frequencyHz())));
        figures.add(
                row("left of a swing after one cycle", decays, one -> figure("%.0f %%", 100 * one.leftAfterACycle())));
        figures.add(row("read from, cycles", decays, one -> figure("%.1f", one.cycles())));
        figures.add(row("of the movement the fit explains", decays, one -> figure("%.1f %%", 100 * one.fit())));
        figures.add(row("damping ratio by its peaks", decays, one -> {
            Double peaks = one.byPeaks();
            return peaks == null ? "too few peaks" : figure("%.3f", peaks);
        }));
        List<String> doubts = new ArrayList<>();
        for (int i = 0; i < decays.size(); i++) {
            if (BounceText.isRough(decays.get(i))) {
                doubts.add(AngleNotes.capital(names.get(i))
                        + " is a rough reading: record it again, with nobody in the car.");
            }
        }
        return new BounceReport(names, figures, verdict(decays, names, inTime), doubts);
    }

    private static Figures row(String name, List<Decay> decays, Function<Decay, String> figure) {
        return new Figures(name, decays.stream().map(figure).toList());
    }

    private static String figure(String form, double value) {
        return String.format(Locale.ROOT, form, value);
    }

    private static String verdict(List<Decay> decays, List<String> names, boolean inTime) {
        if (decays.size() == 1) {
            return "No limit is published for this test: record the other side the same way, or the same corner after the"
                    + " job, and give both. Look first at the damper of a side that is damped clearly less.";
        }
        double one = decays.get(0).dampingRatio();
        double other = decays.get(1).dampingRatio();
        if (Math.min(one, other) / Math.max(one, other) > ALIKE) {
            return inTime ? "It is damped much as before." : "Both sides are damped much alike.";
        }
        if (inTime) {
            return "After the job it is damped " + (other > one ? "more" : "less") + ": "
                    + figure("%.0f %%", 100 * other / one) + " of before."
                    + (other > one ? "" : " Look over what was done.");
        }
        return "The " + names.get(one < other ? 0 : 1) + " side is damped less: "
                + figure("%.0f %%", 100 * Math.min(one, other) / Math.max(one, other))
                + " of the other. Look at it first.";
    }
}
