package putback.tightening;

import putback.quantity.Parsed;

/**
 * A screw thread with 60 degree flanks, its sizes worked out from the defining relations of ISO 68-1 and ISO 724 and of
 * ASME B1.1, never from a table.
 *
 * @param designation such as {@code M12x1.25} or {@code 1/2-20 UNF}
 * @param diameterMm nominal (major) diameter d
 * @param pitchMm pitch P, which is the lead too: one start
 */
public record ScrewThread(String designation, Series series, double diameterMm, double pitchMm) {
    /** H / P of a sharp 60 degree triangle: half the square root of 3. */
    private static final double SHARP_HEIGHT = Math.sqrt(3) / 2;

    /** 2 x 3/8 H / P, from the nominal down to the pitch diameter (ISO 724). */
    private static final double TO_PITCH_DIAMETER = 0.75 * SHARP_HEIGHT;

    /** 2 x 5/8 H / P, from the nominal down to the basic minor diameter (ISO 724). */
    private static final double TO_MINOR_DIAMETER = 1.25 * SHARP_HEIGHT;

    /** H / 6 below the basic minor diameter, both sides together: d3 = d1 - H / 6 (ISO 898-1). */
    private static final double TO_ROOT_DIAMETER = TO_MINOR_DIAMETER + SHARP_HEIGHT / 6;

    /** ASME B1.1: At = 0.7854 (D - 0.9743/n)^2. */
    private static final double UNIFIED_STRESS_DIAMETER = 0.9743;

    /** Reads {@code M12x1.25}, {@code M12}, {@code 1/2-20}, {@code 7/16-14 UNC}, {@code 10-32}; never throws. */
    public static Parsed<ScrewThread> parse(String text) {
        return ThreadText.parse(text);
    }

    /** Pitch diameter d2, mm. */
    public double pitchDiameterMm() {
        return diameterMm - TO_PITCH_DIAMETER * pitchMm;
    }

    /** Basic minor diameter D1, mm: the bore of the nut's thread. */
    public double minorDiameterMm() {
        return diameterMm - TO_MINOR_DIAMETER * pitchMm;
    }

    /** Root diameter d3 of the bolt's thread, mm. */
    public double rootDiameterMm() {
        return diameterMm - TO_ROOT_DIAMETER * pitchMm;
    }

    /** Diameter d0 of the circle with the stress area, mm: (d2 + d3) / 2 for ISO metric (ISO 898-1). */
    public double stressDiameterMm() {
        return series.isInch()
                ? diameterMm - UNIFIED_STRESS_DIAMETER * pitchMm
                : (pitchDiameterMm() + rootDiameterMm()) / 2;
    }

    /** Stress area, mm2. */
    public double stressAreaMm2() {
        double diameter = stressDiameterMm();
        return Math.PI / 4 * diameter * diameter;
    }

    /** Tangent of the helix angle at the pitch diameter: P / (pi d2). */
    double helixTangent() {
        return pitchMm / (Math.PI * pitchDiameterMm());
    }

    /** Tangent of the friction angle on flanks inclined by 30 degrees: mu / cos 30. */
    static double flankFriction(double friction) {
        return friction / SHARP_HEIGHT;
    }
}
