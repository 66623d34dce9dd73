package putback.ledger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import putback.quantity.Torque;

/** A reading beside what it may be, with as many digits as it takes to see which is the greater. */
final class Readings {
    /** Closer than this to a limit is binary noise, in N·m or degrees. */
    static final double NOISE = 1e-9;

    private static final int FINEST = 9;

    private Readings() {}

    static boolean isOutside(double read, double least, double most) {
        return read < least - NOISE || read > most + NOISE;
    }

    /** {@code 98.04 N·m read, 92 to 98 N·m allowed (72.31 lbf·ft, 67.86 to 72.28)}. */
    static String torque(double read, double least, double most) {
        double unit = Torque.NEWTON_METRES_PER_POUND_FOOT;
        int metric = places(read, least, most);
        int pounds = places(read / unit, least / unit, most / unit);
        return rounded(read, metric) + " N·m (" + rounded(read / unit, pounds) + " lbf·ft) read, "
                + span(least, most, metric) + " N·m (" + span(least / unit, most / unit, pounds)
                + " lbf·ft) allowed";
    }

    static String angle(double read, double least, double most) {
        int places = places(read, least, most);
        return rounded(read, places) + " deg turned, " + span(least, most, places) + " deg allowed";
    }

    private static String span(double least, double most, int places) {
        return rounded(least, places) + " to " + rounded(most, places);
    }

    /** As few as show the reading outside. */
    private static int places(double read, double least, double most) {
        double limit = read < least ? least : most;
        int places = limit >= 20 ? 0 : 1;
        while (places < FINEST && same(read, limit, places)) {
            places++;
        }
        boolean broken = !rounded(least, places).equals(rounded(least, FINEST))
                || !rounded(most, places).equals(rounded(most, FINEST));
        return broken && places < 2 ? places + 1 : places;
    }

    private static boolean same(double read, double limit, int places) {
        return rounded(read, places).equals(rounded(limit, places));
    }

    private static String rounded(double value, int places) {
        BigDecimal number = BigDecimal.valueOf(value)
                .setScale(FINEST, RoundingMode.HALF_EVEN)
                .setScale(places, RoundingMode.HALF_EVEN);
        BigDecimal plain = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0).toPlainString() : plain.toPlainString();
    }
}
