package putback.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounds a value once, at the end, for a person. */
final class Rounding {
    /** Places at which noise of binary arithmetic is swept away before a limit is rounded inward. */
    private static final int NOISE = 9;

    /** Nearer to a whole number than this, below {@link #SURELY_WHOLE}, no noise of binary arithmetic makes it a half. */
    private static final double SURELY_NOT_HALF = 0.49;

    private static final double SURELY_WHOLE = 1e9;

    private Rounding() {}

    /** Whole from 20 up, one place from 2, two places below: about as fine as a wrench can be read. */
    static int places(double value) {
        double size = Math.abs(value);
        return size >= 20 ? 0 : size >= 2 ? 1 : 2;
    }

    /** To the nearest; exactly half goes to the even digit. */
    static String nearest(double value, int places) {
        double scaled = value * Math.pow(10, places);
        double whole = Math.rint(scaled);
        boolean clear = Math.abs(scaled - whole) < SURELY_NOT_HALF && Math.abs(whole) < SURELY_WHOLE;
        return plain(
                clear
                        ? BigDecimal.valueOf((long) whole, places)
                        : BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN));
    }

    /** Never below the value: for the low end of what is allowed. */
    static String up(double value, int places) {
        return plain(clean(value).setScale(places, RoundingMode.CEILING));
    }

    /** Never above the value: for the high end of what is allowed. */
    static String down(double value, int places) {
        return plain(clean(value).setScale(places, RoundingMode.FLOOR));
    }

    private static BigDecimal clean(double value) {
        return BigDecimal.valueOf(value).setScale(NOISE, RoundingMode.HALF_EVEN);
    }

    private static String plain(BigDecimal value) {
        BigDecimal stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0).toPlainString() : stripped.toPlainString();
    }

    /** The value itself when it is finite. */
    static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite quantity: " + value);
        }
        return value;
    }
}
