package putback.tightening;

/**
 * Coefficients of friction while a fastener is turned.
 *
 * @param thread between the flanks, above 0 and at most 1
 * @param head under the turned face, above 0 and at most 1
 */
public record Friction(double thread, double head) {
    /** Steel on steel as usually reckoned with when nobody has measured: the middle of friction class B of VDI 2230. */
    public static final Friction USUAL = same(0.12);

    public Friction {
        check(thread);
        check(head);
    }

    /** The same in the thread and under the head. */
    public static Friction same(double both) {
        return new Friction(both, both);
    }

    /** Whether a figure can be a coefficient of friction here. */
    public static boolean isPossible(double value) {
        return value > 0 && value <= 1;
    }

    private static void check(double value) {
        if (!isPossible(value)) {
            throw new IllegalArgumentException("not a coefficient of friction: " + value);
        }
    }
}
