package putback.sheet;

/**
 * How far times scatter.
 *
 * @param spread default standard deviation of the logarithm of a joint's minutes
 * @param common standard deviation of the logarithm of a factor common to the whole car
 */
public record Times(double spread, double common) {
    public static final Times DEFAULT = new Times(0.25, 0.15);
}
