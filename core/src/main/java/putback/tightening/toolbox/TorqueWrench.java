package putback.tightening.toolbox;

import org.jspecify.annotations.Nullable;
import putback.quantity.Length;
import putback.quantity.Torque;

/**
 * A torque wrench.
 *
 * @param id short, as painted on it: W2
 * @param name empty where it has none
 * @param low lowest marked value, above 0
 * @param high highest marked value, above low
 * @param step between two marks; null where it can be set to any figure
 * @param deviation permissible, as a share: 0.04 for 4 %
 * @param deviationStated false where nobody said and the usual one is taken
 * @param drive its square; null when not known
 * @param length from the middle of the grip to the drive; null when not known
 * @param leftHand whether it measures turning left too
 * @param angle whether it shows an angle as well
 */
public record TorqueWrench(
        String id,
        String name,
        Torque low,
        Torque high,
        @Nullable Torque step,
        double deviation,
        boolean deviationStated,
        @Nullable Length drive,
        @Nullable Length length,
        boolean leftHand,
        boolean angle,
        Upkeep upkeep) {
    private static final double SMALL_NM = 10;
    private static final double USUAL = 0.04;
    private static final double USUAL_SMALL = 0.06;
    private static final double LOWEST_FIFTH = 0.2;

    /**
     * The permissible deviation of a hand wrench set to a scale, as a share: 6 % where its highest value is at most
     * 10 N·m, else 4 %. ISO 6789 (2003), type II class A.
     */
    public static double usualDeviation(Torque high) {
        return high.newtonMetres() <= SMALL_NM ? USUAL_SMALL : USUAL;
    }

    /** Whether a torque is one of those it is marked for, its ends included. */
    public boolean covers(Torque torque) {
        return torque.newtonMetres() >= low.newtonMetres() && torque.newtonMetres() <= high.newtonMetres();
    }

    /** How far a torque is from the middle of the scale: 0 in the middle, 1 at either end. */
    double offMiddle(Torque torque) {
        double middle = (low.newtonMetres() + high.newtonMetres()) / 2;
        return Math.abs(torque.newtonMetres() - middle) / (high.newtonMetres() - middle);
    }

    /** Whether a torque is under a fifth of its highest value, where calibration begins on many wrenches. */
    boolean isLow(Torque torque) {
        return torque.newtonMetres() < LOWEST_FIFTH * high.newtonMetres();
    }

    /** Such as {@code W3 (large)}. */
    public String text() {
        return id + (name.isEmpty() ? "" : " (" + name + ")");
    }

    /** Such as {@code 40 to 200 N·m (30 to 148 lbf·ft)}. */
    public String rangeText() {
        return Torque.spanText(low, high);
    }
}
