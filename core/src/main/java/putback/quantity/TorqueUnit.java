package putback.quantity;

/** The units in which torques are written. */
public enum TorqueUnit {
    NEWTON_METRE("N·m", 1),
    POUND_FOOT("lbf·ft", Torque.NEWTON_METRES_PER_POUND_FOOT),
    POUND_INCH("lbf·in", Torque.NEWTON_METRES_PER_POUND_FOOT / 12),
    /** Standard gravity on one kilogram, exact by definition. */
    KILOGRAM_FORCE_METRE("kgf·m", 9.80665);

    private final String word;
    private final double newtonMetres;

    TorqueUnit(String word, double newtonMetres) {
        this.word = word;
        this.newtonMetres = newtonMetres;
    }

    public String word() {
        return word;
    }

    /** One of it, in newton metres. */
    public double newtonMetres() {
        return newtonMetres;
    }

    /** A number of it, for a person: {@code 66 lbf·ft}. */
    public String text(double number) {
        return Rounding.nearest(number, Math.max(1, Rounding.places(number))) + " " + word;
    }
}
