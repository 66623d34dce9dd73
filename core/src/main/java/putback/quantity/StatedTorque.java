package putback.quantity;

/**
 * A torque with the unit it was written in.
 *
 * @param torque the moment
 * @param unit as written
 */
public record StatedTorque(Torque torque, TorqueUnit unit) {
    /** Reads {@code 98 N·m}, {@code 72 lbf·ft} and their other spellings; never throws. */
    public static Parsed<StatedTorque> parse(String text) {
        return Torque.parse(text).map(torque -> new StatedTorque(torque, unit(text)));
    }

    private static TorqueUnit unit(String readable) {
        NumberText number = NumberText.of(readable);
        Symbol symbol = number == null ? null : Symbol.of(number.rest());
        if (symbol == Symbol.POUND_FOOT) {
            return TorqueUnit.POUND_FOOT;
        }
        if (symbol == Symbol.POUND_INCH) {
            return TorqueUnit.POUND_INCH;
        }
        return symbol == Symbol.KILOGRAM_FORCE_METRE ? TorqueUnit.KILOGRAM_FORCE_METRE : TorqueUnit.NEWTON_METRE;
    }

    /** The number as written. */
    public double number() {
        return torque.newtonMetres() / unit.newtonMetres();
    }

    /** The same number, had it been meant in another unit. */
    public Torque readAs(TorqueUnit other) {
        return new Torque(number() * other.newtonMetres());
    }
}
