package putback.angles.readings;

/**
 * One reading of a steered wheel.
 *
 * @param toeDeg seen from above, toe-in positive: a left wheel steered 20 to the left stands at about -20
 */
public record SteerReading(double toeDeg, double camberDeg) {
    /** {@code sin g} and the two factors that stand before tan SAI and tan caster. */
    double[] terms() {
        double camber = Math.toRadians(camberDeg);
        double toe = Math.toRadians(toeDeg);
        return new double[] {Math.sin(camber), Math.cos(camber) * Math.cos(toe), Math.cos(camber) * Math.sin(toe)};
    }
}
