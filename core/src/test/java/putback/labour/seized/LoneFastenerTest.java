package putback.labour.seized;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.quantity.Parsed;
import putback.sheet.JointKind;
import putback.tightening.ScrewThread;

class LoneFastenerTest {
    private static final BigDecimal RATE = new BigDecimal("60.00");
    private static final BigDecimal PRICE = new BigDecimal("40.00");

    private static LoneFastener of(JointKind kind, Refusal refusal, boolean scrapped, Nearby... near) {
        return new LoneFastener(kind, thread("M12"), RustGrade.SWOLLEN, refusal, List.of(near), scrapped, PRICE, RATE);
    }

    private static ScrewThread thread(String text) {
        return ((Parsed.Value<ScrewThread>) ScrewThread.parse(text)).value();
    }

    private static Row row(LoneFastener fastener) {
        return ((Parsed.Value<Row>) fastener.answer()).value();
    }

    @Test
    void itsOrder_isThatOfTheUsualResorts_onTheSameQuestion() {
        Row asked = row(of(JointKind.BOLT_NUT, Refusal.STUCK, false, Nearby.HOSE));
        Seized same = new Seized(RATE, UsualResorts.of(PRICE), Refusal.STUCK, List.of(Nearby.HOSE));
        assertThat(asked).isEqualTo(((Parsed.Value<Row>) same.answer()).value());
    }

    @Test
    void whatIsScrapAnyway_costsOnlyTime_soItIsCutSooner() {
        Row kept = row(of(JointKind.BOLT_NUT, Refusal.STUCK, false));
        Row scrap = row(of(JointKind.BOLT_NUT, Refusal.STUCK, true));
        assertThat(scrap.expectedCost()).isLessThan(kept.expectedCost());
        assertThat(scrap.tries())
                .allSatisfy(one -> assertThat(one.attempt().scraps()).isEqualByComparingTo(BigDecimal.ZERO));
        assertThat(of(JointKind.BOLT_NUT, Refusal.STUCK, true).beforehand().get(0))
                .startsWith("It is scrap");
    }

    @Test
    void aBan_holdsForScrapToo() {
        Row scrap = row(of(JointKind.BOLT_NUT, Refusal.STUCK, true, Nearby.GAS, Nearby.HOSE));
        assertThat(scrap.leftOut()).anySatisfy(out -> {
            assertThat(out.attempt().id()).isEqualTo("heat");
            assertThat(out.banned()).isTrue();
            assertThat(out.reasons()).hasSize(2);
        });
    }

    @Test
    void aKind_refusesOnlyAsItCan() {
        assertThat(of(JointKind.NUT, Refusal.IN_BORE, false).answer().refusal()).contains("nut", "in bore");
        for (JointKind kind : JointKind.values()) {
            for (Refusal refusal : LoneFastener.refusals(kind)) {
                assertThat(row(of(kind, refusal, false)).tries())
                        .as(kind + " " + refusal)
                        .isNotEmpty();
            }
        }
        assertThat(LoneFastener.refusals(JointKind.CLIP)).isEmpty();
    }

    @Test
    void whatIsSaidFirst_namesSizeKindAndRust() {
        assertThat(of(JointKind.BOLT, Refusal.STUCK, false).beforehand())
                .anySatisfy(said -> assertThat(said).contains("Met on M12", "18 mm", "six-point"))
                .anySatisfy(said -> assertThat(said).contains("the shank stays"))
                .anySatisfy(said -> assertThat(said).contains("lost size"))
                .anySatisfy(said -> assertThat(said).contains("about 4 will refuse too", "assumption"));
        LoneFastener small =
                new LoneFastener(JointKind.BOLT, thread("M8"), null, Refusal.STUCK, List.of(), false, PRICE, RATE);
        assertThat(small.beforehand()).anySatisfy(said -> assertThat(said).contains("M8x1.25 is slender"));
        LoneFastener bare = new LoneFastener(
                JointKind.PRESS, null, RustGrade.CLEAN, Refusal.IN_BORE, List.of(), false, PRICE, RATE);
        assertThat(bare.beforehand()).hasSize(2).noneSatisfy(said -> assertThat(said)
                .contains("slender"));
    }
}
