package putback.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import putback.angles.adjusting.AngleJob;
import putback.store.sheets.AnglesRead;
import putback.store.sheets.AnglesReader;

class AnglesPaperTest {
    private static final String CAR = """
            title: The grey van after its struts
            rear:  {left: {camber: -1.2 deg, toe: 0.10 deg}, right: {camber: -1.1 deg, toe: 0.02 deg}}
            front:
              left:  {camber: -0.5 deg, toe: 0.10 deg, caster: 3 deg, sai: 12 deg}
              right: {camber: -0.4 deg, toe: 0.05 deg, caster: 3.1 deg, sai: 12.2 deg}
            toe-read-at: 406.4 mm
            steering-ratio: 16
            wanted:
              front: {camber: [-1.0 deg, 0.0 deg], total-toe: [0.0 deg, 0.2 deg], cross-camber: [-0.5 deg, 0.5 deg]}
              rear: {total-toe: [0.0 deg, 0.3 deg], thrust: [-0.15 deg, 0.15 deg]}
            """;

    private static final String RODS = """
            adjusters:
              left-rod:  {front.left.toe: 0.35 deg, per: turn, range: [-6, 6]}
              right-rod: {front.right.toe: 0.35 deg, per: turn, range: [-6, 6]}
            """;

    private static AngleJob job(String text) {
        return ((AnglesRead.Sound) AnglesReader.readText(text, "car.yaml")).job();
    }

    @Test
    void itSaysWhatToTurn_whatWasRead_andWhatBecomesOfIt_withTheDrawing() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.angles(job(CAR + RODS), Invented.HEAD, HouseStyle.PLAIN))) {
            sheets.pictures("wheel-angles");
            assertThat(sheets.text())
                    .contains("Wheel angles, job 2026-0117", "The grey van after its struts", "What to turn")
                    .contains("Left rod: ", "Right rod: ", "Then the steering wheel stands straight.")
                    .contains("front toe", "0.10 deg (0°06')", "then", "inside", "Measured again");
            assertThat(sheets.drawings()).singleElement().asString().startsWith("The car from above");
            assertThat(sheets.outside()).isEmpty();
        }
    }

    @Test
    void withoutAnythingToTurn_itIsARecordOfWhatWasRead() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.angles(job(CAR), JobHead.BLANK, Invented.EURO))) {
            sheets.pictures("wheel-angles-read");
            assertThat(sheets.text()).contains("As read", "0,10 deg", "inside").doesNotContain("What to turn");
            assertThat(sheets.outside()).isEmpty();
        }
    }

    @Test
    void theSameReadings_giveTheSameBytes() {
        assertThat(Papers.angles(job(CAR + RODS), Invented.HEAD, HouseStyle.PLAIN))
                .isEqualTo(Papers.angles(job(CAR + RODS), Invented.HEAD, HouseStyle.PLAIN));
    }
}
