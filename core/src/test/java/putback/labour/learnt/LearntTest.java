package putback.labour.learnt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.quantity.Parsed;

class LearntTest {
    @Test
    void beta_agreesWithItsClosedForms() {
        assertThat(Beta.logGamma(0.5)).isCloseTo(Math.log(Math.sqrt(Math.PI)), within(1e-13));
        assertThat(Beta.logGamma(11)).isCloseTo(Math.log(3_628_800), within(1e-12));
        for (double x : new double[] {0.01, 0.3, 0.77, 0.999}) {
            assertThat(Beta.below(x, 1, 1)).isCloseTo(x, within(1e-13));
            assertThat(Beta.below(x, 3, 1)).isCloseTo(x * x * x, within(1e-13));
            assertThat(Beta.below(x, 1, 4)).isCloseTo(1 - Math.pow(1 - x, 4), within(1e-13));
            assertThat(Beta.below(x, 0.5, 0.5)).isCloseTo(2 / Math.PI * Math.asin(Math.sqrt(x)), within(1e-12));
            assertThat(Beta.below(x, 2.5, 7)).isCloseTo(1 - Beta.below(1 - x, 7, 2.5), within(1e-12));
        }
    }

    /** With one degree of freedom t is Cauchy's, with two it has a closed form. */
    @Test
    void studentsT_agreesWithItsClosedForms() {
        for (double chance : new double[] {0.05, 0.3, 0.5, 0.9, 0.99}) {
            assertThat(Beta.studentQuantile(chance, 1)).isCloseTo(Math.tan(Math.PI * (chance - 0.5)), within(1e-8));
            double two = (2 * chance - 1) * Math.sqrt(2 / (4 * chance * (1 - chance)));
            assertThat(Beta.studentQuantile(chance, 2)).isCloseTo(two, within(1e-8));
        }
    }

    @Test
    void learningAtOnceAndOneByOne_isTheSame() {
        TimeLearnt before = value(TimeLearnt.of(40, 2, 2, 0.1));
        TimeLearnt atOnce = value(before.after(List.of(42.0, 55.0, 38.0)));
        TimeLearnt oneByOne = before;
        for (double minutes : new double[] {38, 42, 55}) {
            oneByOne = value(oneByOne.after(List.of(minutes)));
        }
        assertThat(oneByOne.meanLog()).isCloseTo(atOnce.meanLog(), within(1e-12));
        assertThat(oneByOne.scale()).isCloseTo(atOnce.scale(), within(1e-12));
        assertThat(oneByOne.weight()).isEqualTo(5);
        ChanceLearnt counted =
                value(value(value(ChanceLearnt.of(1, 9)).after(1, 10)).after(3, 15));
        assertThat(counted).isEqualTo(value(value(ChanceLearnt.of(1, 9)).after(4, 25)));
        assertThat(counted.weight()).isEqualTo(35);
    }

    @Test
    void moreEvidence_narrowsTheBelief() {
        ChanceLearnt few = new ChanceLearnt(1, 4);
        ChanceLearnt many = new ChanceLearnt(100, 400);
        assertThat(many.quantile(0.95) - many.quantile(0.05)).isLessThan(few.quantile(0.95) - few.quantile(0.05));
        assertThat(many.mean()).isEqualTo(few.mean());
    }

    @Test
    void aPartIsKept_whenTheChancePays() {
        ShelfRule rule = value(ShelfRule.of(80, 20));
        assertThat(rule.keeps(0.21)).isTrue();
        assertThat(rule.keeps(0.2)).isFalse();
        assertThat(rule.count(0.21)).isEqualTo(1);
        assertThat(rule.count(0.19)).isZero();
        assertThat(rule.count(0.5, 0.5, 0.5, 0.5)).isEqualTo(3);
        assertThat(rule.count()).isZero();
    }

    @Test
    void nonsense_isRefusedInWords() {
        assertThat(ChanceLearnt.of(0, 1).refusal()).contains("above 0");
        assertThat(ChanceLearnt.of(Double.NaN, 1).refusal()).contains("above 0");
        assertThat(new ChanceLearnt(1, 1).after(3, 2).refusal()).contains("3 of 2");
        assertThat(new ChanceLearnt(1, 1).after(-1, 2).refusal()).contains("-1 of 2");
        assertThat(TimeLearnt.of(40, 0, 1, 1).refusal()).contains("above 0");
        assertThat(new TimeLearnt(3, 1, 1, 1).after(List.of(0.0)).refusal()).contains("0.0 minutes");
        assertThat(ShelfRule.of(-1, 1).refusal()).contains("above 0");
    }

    private static <T> T value(Parsed<T> parsed) {
        return ((Parsed.Value<T>) parsed).value();
    }
}
