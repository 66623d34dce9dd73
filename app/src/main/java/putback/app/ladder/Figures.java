package putback.app.ladder;

import java.math.RoundingMode;
import putback.quantity.Angle;
import putback.quantity.Minutes;
import putback.quantity.Torque;
import putback.sheet.Fastener;
import putback.sheet.Height;
import putback.sheet.Tightening;

/** How figures are written for people, unit by unit, so that they can stand in columns. */
public final class Figures {
    /** Between the two units in {@link Torque#text()}. */
    private static final String BETWEEN = " (";

    private Figures() {}

    /** Minutes with one decimal, such as {@code 1.5}. */
    public static String minutes(Minutes minutes) {
        return minutes.decimal().setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    /** What the fastener asks for in N·m, {@code snug}, or nothing when it is not known. */
    public static String firstUnit(Fastener fastener) {
        Tightening tightening = fastener.tightening();
        if (tightening instanceof Tightening.ToTorque to) {
            return first(to.torque());
        }
        if (tightening instanceof Tightening.TorqueThenAngle then) {
            return withAngle(first(then.torque()), then.angle());
        }
        return tightening instanceof Tightening.Snug ? "snug" : "";
    }

    /** The same in lbf·ft; nothing for snug. */
    public static String secondUnit(Fastener fastener) {
        Tightening tightening = fastener.tightening();
        if (tightening instanceof Tightening.ToTorque to) {
            return second(to.torque());
        }
        if (tightening instanceof Tightening.TorqueThenAngle then) {
            return withAngle(second(then.torque()), then.angle());
        }
        return "";
    }

    private static String first(Torque torque) {
        String both = torque.text();
        return both.substring(0, both.indexOf(BETWEEN));
    }

    private static String second(Torque torque) {
        String both = torque.text();
        return both.substring(both.indexOf(BETWEEN) + BETWEEN.length(), both.length() - 1);
    }

    private static String withAngle(String torque, Angle angle) {
        return torque + " + " + angle.text();
    }

    /** Whether nobody has said how tight it goes. */
    public static boolean unknown(Fastener fastener) {
        return fastener.tightening() instanceof Tightening.Unknown;
    }

    /** Whether a figure is given and nobody says where it came from. */
    public static boolean unsourced(Fastener fastener) {
        return fastener.source() == null
                && !firstUnit(fastener).isEmpty()
                && !secondUnit(fastener).isEmpty();
    }

    /** What is done to the car to bring it to a height, such as {@code Lower onto its wheels}. */
    public static String change(Height to) {
        return switch (to) {
            case RAISED -> "Raise, wheels hanging";
            case RIDE_HEIGHT -> "Load to ride height";
            case ON_WHEELS -> "Lower onto its wheels";
            case ANY -> "";
        };
    }
}
