package putback.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The quick way of rounding beside the plain one, with many values at a half or next to one. */
class RoundingRandomTest {
    private static final long SEED = 20_260_101;
    private static final int VALUES = 200_000;

    @Test
    void nearest_isWhatExactArithmeticSays() {
        Random random = new Random(SEED);
        for (int i = 0; i < VALUES; i++) {
            int places = random.nextInt(4);
            double value = value(random, places);
            BigDecimal exact = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN);
            String expected =
                    exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
            assertThat(Rounding.nearest(value, places))
                    .as("seed %d, value %s, places %d", SEED, value, places)
                    .isEqualTo(expected);
        }
    }

    private static double value(Random random, int places) {
        double any = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12));
        double half = (Math.rint(any) + 0.5) / Math.pow(10, places);
        return switch (random.nextInt(4)) {
            case 0 -> any;
            case 1 -> half;
            case 2 -> Math.nextUp(half);
            default -> Math.nextDown(half);
        };
    }
}
