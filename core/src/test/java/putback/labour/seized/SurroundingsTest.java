package putback.labour.seized;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.plan.steps.Cars;
import putback.quantity.Minutes;
import putback.sheet.Assembly;

class SurroundingsTest {
    private final Assembly strut = Cars.strut();

    @Test
    void atTheStrut_gasAndSpringAreNear() {
        assertThat(near("left.strut-to-carrier")).contains(Nearby.GAS, Nearby.SPRING);
    }

    @Test
    void aCapOnTheWheel_isNearNothing() {
        assertThat(near("left.cap-clip")).isEmpty();
    }

    @Test
    void whatIsNear_takesTheFlameAway() {
        Attempt heat = new Attempt(
                "heat",
                Minutes.of("6"),
                new BigDecimal("0.6"),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                List.of(),
                UsualHazards.of("heat"));
        Attempt penetrant = Attempt.plain("penetrant", Minutes.of("3"), new BigDecimal("0.35"));
        Seized seized =
                new Seized(BigDecimal.TEN, List.of(heat, penetrant), Refusal.STUCK, near("left.strut-to-carrier"));
        assertThat(seized.answer().map(row -> row.tries().size())).isEqualTo(new putback.quantity.Parsed.Value<>(1));
    }

    @Test
    void theWordsOfAnId_sayWhatItDoes() {
        assertThat(UsualHazards.of("weld-nut-on")).containsExactly(Hazard.FLAME, Hazard.HOT_METAL, Hazard.SPARKS);
        assertThat(UsualHazards.of("air-hammer")).containsExactly(Hazard.BLOWS);
        assertThat(UsualHazards.of("penetrant")).isEmpty();
        assertThat(UsualHazards.of("wheat")).isEmpty();
    }

    private List<Nearby> near(String id) {
        return strut.joints().stream()
                .filter(joint -> joint.id().equals(id))
                .map(joint -> Surroundings.of(strut, joint))
                .findFirst()
                .orElseThrow();
    }
}
