package putback.app.text;

import java.util.List;
import java.util.Locale;
import putback.angles.bounce.Decay;

/** The damping of one corner or two, for a person. */
public final class BounceText {
    private static final double POOR_FIT = 0.9;
    private static final double FEW_CYCLES = 1;
    private static final double ALIKE = 0.9;

    private BounceText() {}

    /**
     * Figures first, then what they are worth.
     *
     * @param decays one, or left and right
     */
    public static String of(List<Decay> decays) {
        StringBuilder text = new StringBuilder();
        if (decays.size() == 1) {
            corner(text, "corner", decays.get(0));
            text.append("No limit is published for this test: record the other side the same way, and\n")
                    .append("give both files. Look first at the damper of a side that is damped clearly less.\n");
            return text.toString();
        }
        corner(text, "left", decays.get(0));
        corner(text, "right", decays.get(1));
        double left = decays.get(0).dampingRatio();
        double right = decays.get(1).dampingRatio();
        double share = Math.min(left, right) / Math.max(left, right);
        String weaker = left < right ? "left" : "right";
        text.append(
                share > ALIKE
                        ? "Both sides are damped much alike.\n"
                        : String.format(
                                Locale.ROOT,
                                "The %s side is damped less: %.0f %% of the other. Look at it first.%n",
                                weaker,
                                100 * share));
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    private static void corner(StringBuilder text, String name, Decay decay) {
        text.append(String.format(
                Locale.ROOT,
                "%-7s damping ratio %.3f, %.2f swings a second,\n"
                        + "        %.0f %% of a swing left after one cycle\n",
                name,
                decay.dampingRatio(),
                decay.frequencyHz(),
                100 * decay.leftAfterACycle()));
        text.append(String.format(
                Locale.ROOT,
                "        read from %.1f cycles; the fit explains %.1f %% of the movement\n%s",
                decay.cycles(),
                100 * decay.fit(),
                decay.byPeaks() == null
                        ? ""
                        : String.format(Locale.ROOT, "        by its peaks %.3f\n", decay.byPeaks())));
        if (isRough(decay)) {
            text.append("        that is a rough reading: record it again, with nobody in the car\n");
        }
    }

    /** Whether too little of the movement was recorded, or understood, to build on it. */
    static boolean isRough(Decay decay) {
        return decay.fit() < POOR_FIT || decay.cycles() < FEW_CYCLES;
    }
}
