package putback.app.papers;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.ladder.Figures;
import putback.plan.steps.Step;
import putback.plan.tools.Limits;
import putback.sheet.Fastener;
import putback.sheet.Joint;
import putback.sheet.Tightening;
import putback.tightening.ReadingWindow;

/** What papers say about a fastener, in the garage's own figures. What nobody has said is said to be not known. */
final class FastenerWords {
    static final String NOT_KNOWN = "not known";
    private final HouseStyle style;

    FastenerWords(HouseStyle style) {
        this.style = style;
    }

    /** How tight it goes, in both units, with its angle. */
    String torque(Fastener fastener) {
        if (fastener.tightening() instanceof Tightening.ToTorque to) {
            return style.torque(to.torque());
        }
        if (fastener.tightening() instanceof Tightening.TorqueThenAngle then) {
            return style.torque(then.torque()) + ", then "
                    + style.words(then.angle().text());
        }
        return fastener.tightening() instanceof Tightening.Snug ? "snug, no figure" : NOT_KNOWN;
    }

    /** The torque alone where an angle follows. */
    String firstStage(Fastener fastener) {
        return fastener.tightening() instanceof Tightening.TorqueThenAngle then
                ? style.torque(then.torque())
                : torque(fastener);
    }

    /** The state of its thread, and who says the figure; nothing where there is no figure. */
    List<String> asked(Fastener fastener) {
        List<String> lines = new ArrayList<>();
        if (Figures.unknown(fastener)) {
            lines.add("look it up in the maker's data and write it here");
            return lines;
        }
        String source = fastener.source();
        if (!Figures.secondUnit(fastener).isEmpty()) {
            lines.add("threads " + fastener.condition().word());
            lines.add(source == null ? "source not given" : "source: " + source);
        }
        return lines;
    }

    /** What a reading may be, the second unit below the first; empty where there is no torque. */
    Cell window(Step step) {
        Limits limits = Limits.of(step);
        if (limits == null) {
            return Cell.EMPTY;
        }
        String both = style.window(new ReadingWindow(limits.least(), limits.most()));
        int second = both.indexOf('(');
        return Cell.of(
                both.substring(0, second - 1),
                List.of(both.substring(second), limits.stated() ? "" : "a tenth each way"));
    }

    /** How many, of what, and whether new ones go on. */
    static List<String> pieces(@Nullable Fastener fastener) {
        List<String> lines = new ArrayList<>();
        if (fastener == null) {
            return lines;
        }
        String size = size(fastener);
        if (fastener.count() > 1 || !size.isEmpty()) {
            lines.add(fastener.count() + (size.isEmpty() ? " of them" : " x " + size));
        }
        if (fastener.leftHanded()) {
            lines.add("left-hand thread");
        }
        if (fastener.singleUse()) {
            lines.add("single-use: a new one");
        }
        return lines;
    }

    /** Thread and class; empty where neither is known. */
    static String size(Fastener fastener) {
        String thread = fastener.thread();
        String strength = fastener.propertyClass();
        String first = thread == null ? "" : thread;
        return strength == null ? first : first.isEmpty() ? "class " + strength : first + ", class " + strength;
    }

    /** A fixing's name without its side. */
    static String name(Joint joint) {
        return joint.entry().name();
    }
}
