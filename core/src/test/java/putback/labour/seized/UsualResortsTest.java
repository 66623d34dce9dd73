package putback.labour.seized;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.plan.steps.Cars;
import putback.quantity.Parsed;
import putback.sheet.Joint;
import putback.sheet.JointKind;

class UsualResortsTest {
    private static final List<Attempt> USUAL = UsualResorts.of(new BigDecimal("12.00"));

    @Test
    void everyRefusal_hasAResort() {
        for (Refusal refusal : Refusal.values()) {
            Row row = row(refusal, List.of());
            assertThat(row.tries()).as(refusal.word()).isNotEmpty();
            assertThat(row.leftChance()).as(refusal.word()).isLessThan(new BigDecimal("0.2"));
        }
    }

    @Test
    void gentleWays_comeBeforeCutting() {
        assertThat(row(Refusal.STUCK, List.of()).tries())
                .extracting(one -> one.attempt().id())
                .startsWith("penetrant")
                .endsWith("cut");
    }

    @Test
    void nearASpring_nothingHeatsOrCuts() {
        for (Refusal refusal : Refusal.values()) {
            assertThat(row(refusal, List.of(Nearby.SPRING)).tries())
                    .allSatisfy(one -> assertThat(one.attempt().hazards())
                            .doesNotContain(Hazard.FLAME, Hazard.HOT_METAL, Hazard.SPARKS));
        }
    }

    @Test
    void rust_seizesMoreWithEveryGrade_andNothingOnACleanCar() {
        for (Joint joint : Cars.strut().joints()) {
            assertThat(RustGrade.CLEAN.seized(joint)).isZero();
            assertThat(RustGrade.WASTED.seized(joint)).isGreaterThanOrEqualTo(RustGrade.SWOLLEN.seized(joint));
            assertThat(RustGrade.WASTED.seized(joint) == 0)
                    .as(joint.id())
                    .isEqualTo(!joint.entry().kind().threaded() && joint.entry().kind() != JointKind.PRESS);
        }
        assertThat(RustGrade.SCALED.seized(0.5, 2)).isCloseTo(1 - 0.95 * 0.95, within(1e-12));
        assertThat(RustGrade.of(5).refusal()).contains("0 (clean) to 4");
        assertThat(RustGrade.of(-1).refusal()).contains("rust -1");
        assertThat(RustGrade.of(2)).isEqualTo(new Parsed.Value<>(RustGrade.SCALED));
    }

    private static Row row(Refusal refusal, List<Nearby> nearby) {
        return ((Parsed.Value<Row>) new Seized(BigDecimal.valueOf(60), USUAL, refusal, nearby).answer()).value();
    }
}
