package putback.app.ladder;

import java.math.BigDecimal;
import java.math.RoundingMode;
import putback.quantity.Minutes;
import putback.quantity.Torque;
import putback.sheet.Fastener;
import putback.sheet.Height;
import putback.sheet.Tightening;

/** How figures are written for people: both units, and no more digits than a hand can use. */
public final class Figures {
    private static final String NEWTON_METRES = " N\u00b7m";
    private static final String POUND_FEET = " lbf\u00b7ft";

    private Figures() {}

    /** Minutes with one decimal, such as {@code 1.5}. */
    public static String minutes(Minutes minutes) {
        return minutes.decimal().setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    /** A torque such as {@code 98 N·m}: whole from 20 up where nothing is lost, else one decimal. */
    public static String newtonMetres(Torque torque) {
        return rounded(torque.newtonMetres(), 1) + NEWTON_METRES;
    }

    /** A torque such as {@code 72 lbf·ft}. */
    public static String poundFeet(Torque torque) {
        return rounded(torque.poundFeet(), torque.poundFeet() < 20 ? 1 : 0) + POUND_FEET;
    }

    /** An angle such as {@code 90°}. */
    public static String degrees(double degrees) {
        return rounded(degrees, 1) + "\u00b0";
    }

    /** A decimal without trailing zeros. */
    public static String rounded(double value, int places) {
        BigDecimal exact = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        BigDecimal plain = exact.signum() == 0 ? BigDecimal.ZERO : exact.stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }

    /** What the fastener asks for in N·m, {@code snug}, or nothing when it is not known. */
    public static String firstUnit(Fastener fastener) {
        Tightening tightening = fastener.tightening();
        if (tightening instanceof Tightening.ToTorque to) {
            return newtonMetres(to.torque());
        }
        if (tightening instanceof Tightening.TorqueThenAngle then) {
            return newtonMetres(then.torque()) + " + " + degrees(then.angle().degrees());
        }
        return tightening instanceof Tightening.Snug ? "snug" : "";
    }

    /** The same in lbf·ft; nothing for snug. */
    public static String secondUnit(Fastener fastener) {
        Tightening tightening = fastener.tightening();
        if (tightening instanceof Tightening.ToTorque to) {
            return poundFeet(to.torque());
        }
        if (tightening instanceof Tightening.TorqueThenAngle then) {
            return poundFeet(then.torque()) + " + " + degrees(then.angle().degrees());
        }
        return "";
    }

    /** Whether nobody has said how tight it goes. */
    public static boolean unknown(Fastener fastener) {
        return fastener.tightening() instanceof Tightening.Unknown;
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
