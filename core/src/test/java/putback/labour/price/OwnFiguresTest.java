package putback.labour.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.labour.seized.Attempt;
import putback.quantity.Minutes;

class OwnFiguresTest {
    private static final Attempt HEAT = Attempt.plain("heat", Minutes.of("6"), new BigDecimal("0.6"));

    private static Attempt after(Attempt assumed, Observed... seen) {
        return new OwnFigures(List.of(seen)).tried(assumed);
    }

    @Test
    void whereNothingWasSeen_theAssumptionStandsAsItIs() {
        assertThat(after(HEAT)).isEqualTo(HEAT);
        assertThat(after(HEAT, new Observed.Tried("penetrant", true, 3))).isEqualTo(HEAT);
        assertThat(OwnFigures.NONE.hasAny()).isFalse();
    }

    /** Beta(6, 4) for 0.6 that counts like ten cases; 1 of 10 seen makes 7 of 20. */
    @Test
    void chance_movesFromTheAssumedToTheSeen_byTheWeightOfBoth() {
        List<Observed> seen = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            seen.add(new Observed.Tried("heat", i == 0, 0));
        }
        assertThat(new OwnFigures(seen).tried(HEAT).chance()).isEqualByComparingTo("0.35");
        assertThat(new OwnFigures(seen).tried(HEAT).minutes()).isEqualTo(HEAT.minutes());
    }

    /** The assumed median counts like four jobs, in logarithms: (4 ln 6 + 4 ln 24) / 8 is ln 12. */
    @Test
    void minutes_moveByTheGeometricMean() {
        Observed one = new Observed.Tried("heat", true, 24);
        assertThat(after(HEAT, one, one, one, one).minutes().decimal().doubleValue())
                .isCloseTo(12, within(0.001));
    }

    @Test
    void whatIsSure_staysSureUntilItFails() {
        Attempt cut = Attempt.plain("cut", Minutes.of("15"), BigDecimal.ONE);
        assertThat(after(cut, new Observed.Tried("cut", true, 0)).chance()).isEqualByComparingTo("1");
        assertThat(after(cut, new Observed.Tried("cut", false, 0)).chance()).isEqualByComparingTo("0.9");
    }
}
