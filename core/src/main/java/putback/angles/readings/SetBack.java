package putback.angles.readings;

/**
 * One front hub stands farther back than the other.
 *
 * @param leftMm wheelbase on the left
 * @param rightMm wheelbase on the right
 * @param trackMm of the front axle, above 0
 */
public record SetBack(double leftMm, double rightMm, double trackMm) {
    /** How far the right front wheel stands behind the left one. */
    public double millimetres() {
        return leftMm - rightMm;
    }

    /** Positive when the right front wheel stands back. By definition, atan(difference / track). */
    public double degrees() {
        return Math.toDegrees(Math.atan(millimetres() / trackMm));
    }
}
