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
     * Dry and not known any better. 0.08 to 0.16 is friction class B of VDI 2230 with the upper part of class A; 0.24 is
     * what the nut factor 0.30 of a black bolt comes to on M12 (Shigley 9th ed., table 8-15: K = 0.159 P/d + 1.156 mu).
     */
    public static final FrictionSpan DRY = new FrictionSpan(LEAST, MOST, 0.24);

    /** Oiled: nothing above the ordinary span. */
    public static final FrictionSpan OILED = new FrictionSpan(LEAST, MOST, MOST);

    /** With thread locker: common practice, no source. */
    public static final FrictionSpan LOCKER = new FrictionSpan(LEAST, MOST, 0.20);
}
