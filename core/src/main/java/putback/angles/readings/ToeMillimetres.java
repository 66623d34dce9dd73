package putback.angles.readings;

/** Toe as a distance: how much closer the front edge of a wheel is than its rear edge, at a stated diameter. */
public final class ToeMillimetres {
    private ToeMillimetres() {}

    /** Of one wheel. Source: by definition, asin(mm / diameter); NaN where it is wider than the wheel. */
    public static double degrees(double millimetres, double diameterMm) {
        return Math.toDegrees(Math.asin(millimetres / diameterMm));
    }

    public static double ofDegrees(double degrees, double diameterMm) {
        return diameterMm * Math.sin(Math.toRadians(degrees));
    }

    /** Of both wheels of an axle, shared equally. */
    public static double totalDegrees(double millimetres, double diameterMm) {
        return 2 * degrees(millimetres / 2, diameterMm);
    }

    /** Of both wheels of an axle: diameter times (sin left + sin right). */
    public static double total(double leftDeg, double rightDeg, double diameterMm) {
        return ofDegrees(leftDeg, diameterMm) + ofDegrees(rightDeg, diameterMm);
    }
}
