package putback.labour.seized;

import putback.quantity.Parsed;
import putback.sheet.Joint;
import putback.sheet.Station;

/**
 * How rusty a car is below, and how likely a fastener is seized then. The chances are assumptions of this program (common
 * practice, no source) until the garage has counted its own.
 */
public enum RustGrade {
    CLEAN(0),
    SURFACE(0.02),
    SCALED(0.10),
    SWOLLEN(0.35),
    WASTED(0.60);

    private final double fullyExposed;

    RustGrade(double fullyExposed) {
        this.fullyExposed = fullyExposed;
    }

    /** 0 clean to 4 wasted sections. */
    public int number() {
        return ordinal();
    }

    /**
     * @param grade 0 clean, 1 surface, 2 scaled, 3 swollen threads, 4 wasted sections
     */
    public static Parsed<RustGrade> of(int grade) {
        return grade >= 0 && grade < values().length
                ? new Parsed.Value<>(values()[grade])
                : new Parsed.Refused<>("rust " + grade + " is not a grade; it is 0 (clean) to 4 (wasted sections)");
    }

    /**
     * Chance that one of several fastenings is seized, 0 to 1.
     *
     * @param exposure 0 to 1, how much dirt and salt reach them
     * @param count how many, 1 or more, independent of each other
     */
    public double seized(double exposure, int count) {
        return 1 - Math.pow(1 - fullyExposed * exposure, count);
    }

    /** The same for a joint; only what has a thread, or is a taper or a press fit, seizes. */
    public double seized(Joint joint) {
        return canSeize(joint) ? seized(exposure(joint), joint.fastener().count()) : 0;
    }

    /** Chance that one certain fastener of a joint is seized, 0 to 1. */
    public double seizedEach(Joint joint) {
        return canSeize(joint) ? fullyExposed * exposure(joint) : 0;
    }

    /** Whether it has a thread, or is a taper or a press fit. */
    public static boolean canSeize(Joint joint) {
        return switch (joint.entry().kind()) {
            case BOLT_NUT, BOLT, NUT, SCREW, UNION, TAPER, PRESS -> true;
            case CLIP, PLUG, PIN, CIRCLIP, HOOK, SEAT -> false;
        };
    }

    private static double exposure(Joint joint) {
        Double said = joint.entry().exposure();
        return said == null ? usualExposure(joint.entry().station()) : said;
    }

    /** How much dirt and salt reach a place, 0 to 1. Common practice, no source. */
    public static double usualExposure(Station station) {
        return switch (station) {
            case UNDERNEATH -> 1;
            case WHEEL_WELL -> 0.8;
            case ENGINE_BAY -> 0.3;
            case BOOT -> 0.1;
            case CABIN -> 0.05;
            case BENCH -> 0.5;
        };
    }
}
