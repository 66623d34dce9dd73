package putback.labour.alongside;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import putback.quantity.Distance;
import putback.quantity.Parsed;
import putback.sheet.Life;

class LifeLeftTest {
    private static double fails(double mileage, double horizon, Life life) {
        Parsed<LifeLeft> left = LifeLeft.of(new Distance(mileage), new Distance(horizon));
        return ((Parsed.Value<LifeLeft>) left).value().fails(life);
    }

    @Test
    void halfOfNewParts_failBeforeTheMedian_whateverTheShape() {
        for (double shape : new double[] {0.5, 1, 2, 3.5, 20}) {
            assertThat(fails(0, 120_000, new Life(120_000, shape))).isBetween(0.5 - 1e-12, 0.5 + 1e-12);
        }
    }

    @Test
    void withShapeOne_ageDoesNotCount_andAboveOneItDoes() {
        Life steady = new Life(100_000, 1);
        assertThat(fails(300_000, 20_000, steady))
                .isBetween(fails(0, 20_000, steady) - 1e-12, fails(0, 20_000, steady) + 1e-12);
        Life wearing = new Life(100_000, 3);
        assertThat(fails(90_000, 20_000, wearing)).isGreaterThan(fails(30_000, 20_000, wearing));
    }

    @Test
    void theImpossible_isRefused() {
        assertThat(LifeLeft.of(new Distance(-1), new Distance(1)).refusal()).contains("a mileage of -1 km");
        assertThat(LifeLeft.of(new Distance(0), new Distance(0)).refusal()).contains("looks nowhere");
        assertThat(LifeLeft.of(new Distance(6e6), new Distance(1)).refusal()).contains("5000000 km");
    }
}
