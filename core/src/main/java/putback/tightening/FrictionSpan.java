package putback.tightening;

/**
 * Between which coefficients of friction a fastener may lie.
 *
 * @param least of the ordinary span
 * @param most of the ordinary span
 * @param limit never more than this
 */
public record FrictionSpan(double least, double most, double limit) {
    private static final double LEAST = 0.08;
    private static final double MOST = 0.16;

    /**
     * Dry and not known any better. 0.08 to 0.16 is friction class B of VDI 2230 with the upper part of class A; 0.22 is
     * what a nut factor of 0.27 comes to, the most of the range for dry steel of supplier tables.
     */
    public static final FrictionSpan DRY = new FrictionSpan(LEAST, MOST, 0.22);

    /** Oiled: nothing above the ordinary span. */
    public static final FrictionSpan OILED = new FrictionSpan(LEAST, MOST, MOST);

    /** With thread locker: common practice, no source. */
    public static final FrictionSpan LOCKER = new FrictionSpan(LEAST, MOST, 0.20);
}
