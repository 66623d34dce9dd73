package putback.tightening;

/** Ways to tighten, and how far from the wanted clamp load each may end: MIL-HDBK-60, table I; NASA-STD-5020, table 3. */
public enum Method {
    FEEL("by feel", 0.35),
    TORQUE_WRENCH("by torque wrench", 0.25),
    TURN("by angle from snug", 0.15);

    private final String words;
    private final double scatter;

    Method(String words, double scatter) {
        this.words = words;
        this.scatter = scatter;
    }

    public String words() {
        return words;
    }

    /** Plus or minus this share of the wanted clamp load. */
    public double scatter() {
        return scatter;
    }

    /** Tightening factor alphaA of VDI 2230, the largest over the least clamp load: (1 + s) / (1 - s). */
    public double tighteningFactor() {
        return (1 + scatter) / (1 - scatter);
    }

    /** Share to either side that belongs to a tightening factor: (a - 1) / (a + 1). */
    public static double scatterOf(double tighteningFactor) {
        return (tighteningFactor - 1) / (tighteningFactor + 1);
    }
}
