package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import putback.angles.adjusting.AngleJob;
import putback.angles.adjusting.Turned;

/** Files with something wrong in them: a fault or an answer, never a throw. */
class AnglesReaderRandomTest {
    private static final String CAR = """
            rear:  {left: {camber: -1.2 deg, toe: 0.10 deg}, right: {camber: -1.1 deg, toe: 0.02 deg}}
            front:
              left:  {camber: -0.5 deg, toe: 0.10 deg, sweep: [{toe: -19.9 deg, camber: 1.26 deg}, {toe: 20.1 deg, camber: -0.78 deg}]}
              right: {camber: -0.4 deg, toe: 0.7 mm, caster: 3.1 deg, sai: 0°15'}
            toe-read-at: 406.4 mm
            steering-ratio: 16
            gauge: {camber: 0.05 deg, toe: 0.02 deg}
            wheelbase: {left: 2600 mm, right: 2605 mm}
            track: 1500 mm
            ride-height: {front: 380 mm}
            wanted:
              front: {camber: [{at: [376 mm, 385 mm], range: [-1.0 deg, 0.0 deg]}], total-toe: [0.0 deg, 0.2 deg]}
              rear: {total-toe: [0.0 deg, 0.3 deg], thrust: [-0.15 deg, 0.15 deg]}
            adjusters:
              left-rod:  {front.left.toe: 0.35 deg, per: turn, range: [-6, 6], ways: [shorter, longer]}
              right-cam: {front.right.toe: 0.35 deg, per: mark, range: [-6, 6], whole: true}
            """;
    private static final String[] PIECES = {
        "{", "}", "[", "]", ":", ",", "-", "'", "\"", "0", "9", "°", "mm", "deg", "\n", " ", "#", "&a", "*a", "!!",
        "e9", ".nan", "~", "left", "toe"
    };

    private static String spoilt(Random random) {
        StringBuilder text = new StringBuilder(CAR);
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            int at = random.nextInt(text.length());
            int to = Math.min(text.length(), at + random.nextInt(4));
            boolean digit = Character.isDigit(text.charAt(at));
            text.replace(
                    at, digit ? at + 1 : to, digit ? "" + random.nextInt(10) : PIECES[random.nextInt(PIECES.length)]);
        }
        return text.toString();
    }

    @Test
    void asItStands_itIsSound() {
        assertThat(AnglesReader.readText(CAR, "car")).isInstanceOf(AnglesRead.Sound.class);
    }

    @Test
    void spoiltFiles_giveFaultsWithAPlace_orAnAnswerThatIsFinite() {
        int sound = 0;
        for (int seed = 0; seed < 4000; seed++) {
            String text = spoilt(new Random(seed));
            AnglesRead read = AnglesReader.readText(text, "car");
            if (read instanceof AnglesRead.Faulty faulty) {
                assertThat(faulty.faults()).as("seed " + seed).isNotEmpty();
                assertThat(faulty.faults().get(0).line()).as("seed " + seed).isPositive();
                continue;
            }
            sound++;
            AngleJob job = ((AnglesRead.Sound) read).job();
            Turned turned = job.turned();
            for (Turned.Step step : turned.steps()) {
                assertThat(step.by())
                        .as("seed " + seed)
                        .isBetween(step.adjuster().low() - 1e-6, step.adjuster().high() + 1e-6);
            }
            turned.after().degrees().values().forEach(value -> assertThat(value).isFinite());
        }
        assertThat(sound).isBetween(200, 3800);
    }
}
