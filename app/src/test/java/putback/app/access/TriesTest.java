package putback.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class TriesTest {
    private final Tries tries = new Tries(Clock.fixed(Instant.EPOCH, ZoneOffset.UTC));

    @Test
    void aName_hasFiveTries_fromWhereverTheyCome() {
        for (int i = 0; i < Tries.MOST; i++) {
            assertThat(tries.take("Ada", "10.0.0." + i)).isTrue();
        }
        assertThat(tries.take(" ADA", "10.0.0.9")).isFalse();
        assertThat(tries.take("Bo", "10.0.0.9")).isTrue();
    }

    @Test
    void anAddress_hasFiveTries_forWhateverNames() {
        for (int i = 0; i < Tries.MOST; i++) {
            assertThat(tries.take("name " + i, "10.0.0.1")).isTrue();
        }
        assertThat(tries.take("another", "10.0.0.1")).isFalse();
        assertThat(tries.take("another", "10.0.0.2")).isTrue();
    }

    @Test
    void whatDidNotFail_doesNotCount() {
        for (int i = 0; i < 20; i++) {
            assertThat(tries.take("Ada", "10.0.0.1")).isTrue();
            tries.giveBack("Ada", "10.0.0.1");
        }
    }
}
