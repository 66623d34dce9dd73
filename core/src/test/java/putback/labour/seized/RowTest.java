package putback.labour.seized;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import putback.quantity.Minutes;
import putback.quantity.Parsed;

class RowTest {
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
    private static final Attempt PENETRANT = attempt("penetrant", "3", "0.35");
    private static final Attempt HEAT = with("heat", "6", "0.6", "0.1", "12", "0", Hazard.FLAME);
    private static final Attempt CUT = with("cut", "15", "1", "0", "0", "18", Hazard.SPARKS);

    @Test
    void cheapestOverChance_comesFirst_andTheCertainOneEndsTheRow() {
        Row row = row(HEAT, CUT, PENETRANT);
        assertThat(ids(row)).containsExactly("penetrant", "heat", "cut");
        assertThat(row.expectedMinutes()).isEqualByComparingTo("10.8");
        assertThat(row.expectedCost()).isEqualByComparingTo("16.26");
        assertThat(row.p90Minutes()).isEqualTo(Minutes.of("24"));
        assertThat(row.isCertain()).isTrue();
    }

    @Test
    void exactlyNineTenths_areEnoughForTheNinetiethPercentile() {
        Row row = row(attempt("first", "2", "0.9"), attempt("second", "50", "1"));
        assertThat(row.p90Minutes()).isEqualTo(Minutes.of("2"));
    }

    @Test
    void whatNeverPays_isLeftOut() {
        Row row = row(CUT, attempt("fiddle", "20", "0.2"), attempt("hope", "1", "0"));
        assertThat(ids(row)).containsExactly("cut");
        assertThat(row.leftOut())
                .extracting(LeftOut::because)
                .containsExactly("it never works", "for its chance it saves nothing over cut, which is sure to work");
    }

    @Test
    void withoutACertainOne_allAreTried_andWhatIsLeftIsSaid() {
        Row row = row(PENETRANT, HEAT);
        assertThat(row.leftChance()).isEqualByComparingTo("0.26");
        assertThat(row.tries().get(1).worth()).isEqualByComparingTo("12");
        assertThat(row.p90Minutes()).isEqualTo(Minutes.of("9"));
    }

    @Test
    void flameNearAnAirbag_isBanned_howeverCheap() {
        Row row = value(new Seized(SIXTY, List.of(PENETRANT, HEAT, CUT), null, List.of(Nearby.AIRBAG)));
        assertThat(ids(row)).containsExactly("penetrant", "cut");
        assertThat(row.leftOut()).singleElement().satisfies(out -> {
            assertThat(out.banned()).isTrue();
            assertThat(out.because()).startsWith("no flame near airbag: ");
        });
    }

    @Test
    void allThatIsNear_isGivenAsAReason_whateverTheOrder_andWhatCannotBeMovedComesFirst() {
        for (List<Nearby> near : List.of(
                List.of(Nearby.HOSE, Nearby.GAS, Nearby.SPRING), List.of(Nearby.SPRING, Nearby.GAS, Nearby.HOSE))) {
            assertThat(value(new Seized(SIXTY, List.of(HEAT), null, near))
                            .leftOut()
                            .get(0)
                            .reasons())
                    .as("near " + near)
                    .containsExactly(
                            "no flame near gas: " + Nearby.GAS.because(),
                            "no flame near spring: " + Nearby.SPRING.because(),
                            "no flame near hose: " + Nearby.HOSE.because());
        }
    }

    @Test
    void whatNobodyNamedAsNear_isListed_asFarAsATryWouldHurtIt() {
        Row row = value(new Seized(SIXTY, List.of(PENETRANT, CUT), null, List.of(Nearby.BEARING)));
        assertThat(row.hazardous()).containsExactly("cut");
        assertThat(row.notNamed())
                .contains(Nearby.HOSE, Nearby.GAS, Nearby.TANK)
                .doesNotContain(Nearby.BEARING, Nearby.AIRBAG);
        assertThat(row(PENETRANT).notNamed()).isEmpty();
    }

    @Test
    void howItRefuses_picksTheCandidates() {
        Attempt grip = new Attempt(
                "grip",
                Minutes.of("2"),
                new BigDecimal("0.5"),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                List.of(Refusal.SPINS),
                List.of());
        assertThat(ids(value(new Seized(SIXTY, List.of(grip, CUT), Refusal.SPINS, List.of()))))
                .containsExactly("grip", "cut");
        assertThat(ids(value(new Seized(SIXTY, List.of(grip, CUT), Refusal.STUCK, List.of()))))
                .containsExactly("cut");
    }

    @Test
    void nothingThatMayBeTried_isAnAnswerToo() {
        Row row = value(new Seized(SIXTY, List.of(HEAT), null, List.of(Nearby.TANK)));
        assertThat(row.tries()).isEmpty();
        assertThat(row.leftChance()).isEqualByComparingTo(BigDecimal.ONE);
        assertThat(row.p90Minutes()).isEqualTo(Minutes.ZERO);
    }

    @Test
    void nonsense_isRefusedInWords() {
        assertThat(refusal(BigDecimal.ZERO, CUT)).contains("more than 0");
        assertThat(refusal(SIXTY)).contains("no resort");
        assertThat(refusal(SIXTY, CUT, CUT)).isEqualTo("resort cut is named twice; keep one of them");
        assertThat(refusal(SIXTY, attempt("a", "1", "1.01"))).contains("not from 0 to 1");
        assertThat(refusal(SIXTY, attempt("a", "1", "-0.1"))).contains("not from 0 to 1");
        assertThat(refusal(SIXTY, attempt("a", "-1", "1"))).contains("below 0");
    }

    @Test
    void tenThousandResorts_areOrderedQuickly() {
        List<Attempt> many = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            many.add(attempt("r" + i, "" + (1 + i * 7919 % 10_007), "0.00012345678901234567"));
        }
        Row row =
                Assertions.assertTimeout(Duration.ofSeconds(5), () -> value(new Seized(SIXTY, many, null, List.of())));
        assertThat(row.tries()).hasSize(10_000);
    }

    private static Attempt attempt(String id, String minutes, String chance) {
        return Attempt.plain(id, Minutes.of(minutes), new BigDecimal(chance));
    }

    private static Attempt with(
            String id, String minutes, String chance, String breaks, String price, String scraps, Hazard hazard) {
        return new Attempt(
                id,
                Minutes.of(minutes),
                new BigDecimal(chance),
                new BigDecimal(breaks),
                new BigDecimal(price),
                new BigDecimal(scraps),
                List.of(),
                List.of(hazard));
    }

    private static Row row(Attempt... attempts) {
        return value(new Seized(SIXTY, List.of(attempts), null, List.of()));
    }

    private static Row value(Seized seized) {
        return ((Parsed.Value<Row>) seized.answer()).value();
    }

    private static String refusal(BigDecimal rate, Attempt... attempts) {
        return new Seized(rate, List.of(attempts), null, List.of()).answer().refusal();
    }

    private static List<String> ids(Row row) {
        return row.tries().stream().map(one -> one.attempt().id()).toList();
    }
}
