package putback.sheet;

import putback.quantity.Angle;
import putback.quantity.Torque;

/** What a joint asks for when it is tightened. */
public sealed interface Tightening {
    /** Nobody has said: shown as not known, never as a guess. */
    record Unknown() implements Tightening {}

    /** Snug by hand; no figure belongs to it. */
    record Snug() implements Tightening {}

    /** A torque alone. */
    record ToTorque(Torque torque) implements Tightening {}

    /** A torque, then an angle, as two separate stages. */
    record TorqueThenAngle(Torque torque, Angle angle) implements Tightening {}

    Tightening UNKNOWN = new Unknown();
    Tightening SNUG = new Snug();
}
