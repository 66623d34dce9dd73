package putback.angles.bounce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import putback.quantity.Parsed;

class BounceRandomTest {
    @Test
    void withoutNoise_theRatioAndTheFrequencyComeBackExactly() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            double ratio = 0.03 + 0.5 * random.nextDouble();
            double hertz = 0.8 + 12 * random.nextDouble();
            Decay decay = value(Bounce.of(trace(random, ratio, hertz, 0, 0)));
            assertThat(decay.dampingRatio()).as("seed " + seed).isCloseTo(ratio, within(1e-6));
            assertThat(decay.frequencyHz()).as("seed " + seed).isCloseTo(hertz, within(1e-5));
            assertThat(decay.fit()).isGreaterThan(0.999999);
        }
    }

    @Test
    void withNoiseAndAStillBeginning_theRatioStaysClose() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            double ratio = 0.1 + 0.3 * random.nextDouble();
            double hertz = 1 + random.nextDouble();
            Decay decay = value(Bounce.of(trace(random, ratio, hertz, 0.01, 60)));
            assertThat(decay.dampingRatio()).as("seed " + seed).isCloseTo(ratio, within(0.02));
            if (decay.byPeaks() != null && ratio < 0.3) {
                assertThat(decay.byPeaks()).as("seed " + seed).isCloseTo(ratio, within(0.06));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"flat", "noise", "line", "rest", "steady", "growing", "creep"})
    void whatIsNoBounce_isRefused(String kind) {
        Random random = new Random(7);
        double[] seconds = new double[400];
        double[] values = new double[400];
        for (int i = 0; i < 400; i++) {
            seconds[i] = i * 0.01;
            values[i] = switch (kind) {
                case "noise" -> random.nextGaussian();
                case "line" -> i;
                case "rest" -> i == 3 ? 1 : 0;
                case "steady" -> Math.sin(0.1 * i);
                case "growing" -> Math.exp(0.005 * i) * Math.sin(0.1 * i);
                case "creep" -> Math.exp(-0.05 * i);
                default -> 12;
            };
        }
        Trace trace = ((Trace.Taken.Sound) Trace.of(seconds, values)).trace();
        assertThat(Bounce.of(trace)).isInstanceOf(Parsed.Refused.class);
    }

    private static Trace trace(Random random, double ratio, double hertz, double noise, int still) {
        int size = 500;
        double step = 4 / hertz / (size - still);
        double swing = 2 * Math.PI * hertz;
        double decay = swing * ratio / Math.sqrt(1 - ratio * ratio);
        double level = 100 * random.nextDouble();
        double[] seconds = new double[size];
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            seconds[i] = i * step;
            double t = (i - still) * step;
            double swung = i < still ? 0.2 : Math.exp(-decay * t) * Math.cos(swing * t);
            values[i] = level - 40 * (swung + noise * random.nextGaussian());
        }
        return ((Trace.Taken.Sound) Trace.of(seconds, values)).trace();
    }

    private static Decay value(Parsed<Decay> parsed) {
        assertThat(parsed).as(parsed.refusal()).isInstanceOf(Parsed.Value.class);
        return ((Parsed.Value<Decay>) parsed).value();
    }
}
