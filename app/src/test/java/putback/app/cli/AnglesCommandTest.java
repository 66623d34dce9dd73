package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnglesCommandTest {
    static final String CAR = """
            rear:  {left: {camber: -1.2 deg, toe: 0.10 deg}, right: {camber: -1.1 deg, toe: 0.02 deg}}
            front:
              left:  {camber: -0.5 deg, toe: 0.10 deg, sweep: [{toe: -19.9 deg, camber: 1.25665 deg}, {toe: 20.1 deg, camber: -0.78427 deg}]}
              right: {camber: -0.4 deg, toe: 0.05 deg, caster: 3.1 deg, sai: 12.2 deg}
            toe-read-at: 406.4 mm
            steering-ratio: 16
            wanted:
              front: {camber: [-1.0 deg, 0.0 deg], total-toe: [0.0 deg, 0.2 deg], cross-camber: [-0.5 deg, 0.5 deg]}
              rear: {total-toe: [0.0 deg, 0.3 deg], thrust: [-0.15 deg, 0.15 deg]}
            adjusters:
              left-rod:  {front.left.toe: 0.35 deg, per: turn, range: [-6, 6]}
              right-rod: {front.right.toe: 0.35 deg, per: turn, range: [-6, 6]}
              left-bolt: {front.left.camber: 0.63 deg, front.left.toe: 0.31 deg, per: mm, range: [-1, 1]}
            """;

    @TempDir
    Path folder;

    private Said said(String text, String... more) throws IOException {
        Path file = folder.resolve("car.yaml");
        Files.writeString(file, text);
        String[] words = new String[more.length + 2];
        words[0] = "angles";
        words[1] = file.toString();
        System.arraycopy(more, 0, words, 2, more.length);
        return Said.by(words);
    }

    /** Every number of an answer by its path, such as {@code after.front.left.toeDeg}. */
    private Map<String, Double> numbers(String text) throws IOException {
        Map<String, Double> numbers = new LinkedHashMap<>();
        try (JsonParser parser =
                new JsonFactory().createParser(said(text, "--json").out())) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token.isNumeric()) {
                    String path = parser.getParsingContext().pathAsPointer().toString();
                    numbers.put(path.substring(1).replace('/', '.'), parser.getDoubleValue());
                }
            }
        }
        return numbers;
    }

    private static void close(Map<String, Double> numbers, String path, double value) {
        assertThat(numbers.get(path)).as(path).isNotNull().isCloseTo(value, within(1e-4));
    }

    @Test
    void everyAgreedKey_hasTheRightFigure() throws IOException {
        Map<String, Double> numbers = numbers(CAR);
        close(numbers, "front.left.camberDeg", -0.5);
        close(numbers, "front.left.toeDeg", 0.1);
        close(numbers, "front.left.casterDeg", 3);
        close(numbers, "front.left.saiDeg", 12);
        close(numbers, "front.left.includedDeg", 11.5);
        close(numbers, "front.right.includedDeg", 11.8);
        close(numbers, "front.totalToeDeg", 0.15);
        close(numbers, "front.crossCamberDeg", -0.1);
        close(numbers, "front.crossCasterDeg", -0.1);
        close(numbers, "rear.totalToeDeg", 0.12);
        close(numbers, "rear.thrustDeg", 0.04);
        close(numbers, "steeringWheelOffDeg", -0.24);
        close(numbers, "frontTotalToeMm", 1.06395);
    }

    @Test
    void whatIsTurned_bringsAllOfItInside_withAStraightSteeringWheel() throws IOException {
        Map<String, Double> numbers = numbers(CAR);
        close(numbers, "after.front.totalToeDeg", 0.1);
        close(numbers, "after.steeringWheelOffDeg", 0);
        close(numbers, "adjust.2.by", 0.05 / 0.63);
        close(numbers, "adjust.0.by", (0.09 - 0.1 - 0.05 / 0.63 * 0.31) / 0.35);
        close(numbers, "adjust.1.by", -0.04 / 0.35);
        assertThat(said(CAR, "--json").out())
                .contains("\"inside\":true", "\"straight\":true", "\"adjuster\":\"left-rod\"", "\"per\":\"turn\"");
    }

    @Test
    void toeInMillimetresInchesAndMinutes_isTheSameToe() throws IOException {
        for (String toe : new String[] {"0°15'", "0 deg 15 min", "1.77322 mm", "0.0698119 in", "15'", "0,25 deg"}) {
            Map<String, Double> numbers = numbers("toe-read-at: 406.4 mm\nfront: {left: {toe: \"" + toe + "\"}}\n");
            assertThat(numbers.get("front.left.toeDeg")).as(toe).isCloseTo(0.25, within(1e-5));
        }
    }

    @Test
    void aRightWheel_isTheMirrorOfALeftOne() throws IOException {
        String left = "front: {left: {camber: -0.5 deg, toe: 0.1 deg, sweep: [{toe: -15.9 deg, camber: 0.8 deg},"
                + " {toe: 20.1 deg, camber: -0.78427 deg}]}}\n";
        Map<String, Double> one = numbers(left);
        Map<String, Double> other = numbers(left.replace("left", "right"));
        assertThat(one.get("front.left.casterDeg")).isNotNull().isEqualTo(other.get("front.right.casterDeg"));
        assertThat(one.get("front.left.saiDeg")).isNotNull().isEqualTo(other.get("front.right.saiDeg"));
    }

    @Test
    void onPaper_itIsAPdf_andNothingElseBesides() throws IOException {
        Path paper = folder.resolve("angles.pdf");
        Said said = said(CAR, "--pdf", paper.toString(), "--paper", "letter", "--on", "2026-11-02");
        assertThat(said.exit()).as(said.err()).isEqualTo(Exit.DONE);
        assertThat(said.out()).isEmpty();
        assertThat(Files.readString(paper, java.nio.charset.StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
        assertThat(said(CAR, "--pdf", paper.toString(), "--json").err()).contains("give one of them");
    }

    @Test
    void withoutARatio_whatIsTurned_isSaidOfTheRoadWheels() throws IOException {
        assertThat(said(CAR.replace("steering-ratio: 16\n", "")).out())
                .contains("The road wheels stand 0.0", "Then the road wheels stand straight.");
    }

    @Test
    void aSweepOfHalfADegree_saysSo_withItsPlace() throws IOException {
        Said said = said("front:\n  left: {camber: 0 deg, toe: 0 deg, sweep: [{toe: -0.5 deg, camber: 0.05 deg},"
                + " {toe: 0.5 deg, camber: -0.05 deg}]}\n");
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains("car.yaml:2:", "not steered far enough");
        assertThat(said.out()).isEmpty();
    }

    @Test
    void allFaults_areToldAtOnce_withTheirPlaces() throws IOException {
        Said said = said("""
                front: {left: {camber: green, toe: 1.5 mm, castor: 3 deg}}
                wanted: {front: {camber: [1 deg, 0 deg], total-toe: 3}}
                adjusters:
                  Rod: {front.left.toe: 0.35 deg, per: turn}
                  rod: {front.left.toe: 0 deg, range: [1, 2]}
                  none: {per: turn}
                steering-ratio: 0
                """);
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err())
                .contains(":1:24: camber of", "toe-read-at", "castor is not a key", "maybe caster")
                .contains("the low end is above", "a range is its two ends", "id has lower case")
                .contains("no change", "it has to hold 0", "changes nothing", "has no per", "more than 0")
                .doesNotContain("Exception");
    }

    @Test
    void whatCannotBeReached_saysWhichLimitStopsIt() throws IOException {
        Said said = said("""
                front: {left: {toe: 1 deg}, right: {toe: 1 deg}}
                rear: {left: {toe: 0 deg}, right: {toe: 0 deg}}
                wanted: {front: {total-toe: [0 deg, 0.2 deg], camber: [0 deg, 1 deg]}}
                adjusters:
                  left-rod: {front.left.toe: 0.35 deg, per: turn, range: [-1, 1], ways: [longer, shorter]}
                  right-rod: {front.right.toe: 0.35 deg, per: turn, range: [-1, 1], ways: [longer, shorter]}
                """);
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.out())
                .contains(
                        "Left rod: 1.00 turn longer; front left toe out 0.35 deg (0°21')",
                        "stays outside",
                        "What stops it: left-rod")
                .contains("is wanted but was not read");
    }

    @Test
    void wholeMarks_areSaidWhole_andTheRearComesFirst() throws IOException {
        Said said = said("""
                front: {left: {toe: 0.2 deg}, right: {toe: 0 deg}}
                rear: {left: {toe: 0.5 deg}, right: {toe: 0 deg}}
                toe-read-at: 16 in
                steering-ratio: 16
                wanted: {rear: {thrust: [-0.1 deg, 0.1 deg]}, front: {total-toe: [0 mm, 1.4 mm]}}
                adjusters:
                  left-rod: {front.left.toe: 0.35 deg, per: turn, range: [-6, 6]}
                  right-rod: {front.right.toe: 0.35 deg, per: turn, range: [-6, 6]}
                  rear-cam: {rear.left.toe: 0.2 deg, per: mark, range: [-5, 5], whole: true}
                """);
        assertThat(said.out())
                .containsSubsequence("Rear cam: 2 marks; rear left toe out 0.40 deg (0°24')", "Left rod:")
                .contains("the steering wheel stands straight", "front total toe is 0.70 mm at 406.4 mm");
    }

    @Test
    void aPictureIsWritten_butNotOverTheFile() throws IOException {
        Path picture = folder.resolve("car.svg");
        assertThat(said(CAR, "--svg", picture.toString()).exit()).isEqualTo(Exit.DONE);
        assertThat(Files.readString(picture)).startsWith("<svg").contains("thrust 0.04 deg");
        assertThat(said(CAR, "--svg", folder.resolve("car.yaml").toString()).exit())
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(said(CAR, "--svg", picture.toString(), "--json").err()).contains("do not go together");
    }

    @Test
    void aRangeByRideHeight_takesTheLineThatTheCarStandsIn() throws IOException {
        String table = """
                front: {left: {camber: -0.5 deg}}
                ride-height: {front: 380 mm}
                wanted:
                  front:
                    camber:
                      - {at: [366 mm, 375 mm], range: [-0.7 deg, -0.1 deg]}
                      - {at: [376 mm, 385 mm], range: [-0.4 deg, 0.2 deg]}
                """;
        assertThat(said(table, "--json").out()).contains("\"lowDeg\":-0.4", "\"outsideByDeg\":0.0999");
        assertThat(said(table.replace("380", "500")).err()).contains("in none of its lines");
        assertThat(said(table.replace("ride-height: {front: 380 mm}\n", "")).err())
                .contains("depends on ride height");
    }

    @Test
    void uglyFiles_getAFaultLineEach_andNoTrace() throws IOException {
        for (String text : new String[] {
            "",
            "[]",
            "front",
            "front: 3",
            "front: {left: 3}",
            "front: {left: {sweep: 3}}",
            "front: {left: {camber: 1 deg, toe: 0 deg, sweep: [{toe: 1 deg}]}}",
            "front: {left: {sweep: [{toe: -20 deg, camber: 1 deg}, {toe: 20 deg, camber: 0 deg}]}}",
            "front: {left: {camber: .nan}}",
            "front: {left: {camber: 400 deg}}",
            "front: {left: {toe: 500 mm}}\ntoe-read-at: 400 mm",
            "front: {left: {toe: 5 mm}}\ntoe-read-at: -4 mm",
            "adjusters: []\nfront: {}",
            "front: {}\nadjusters: {a: {front.left.toe: 1 deg, per: mark, whole: yes}}",
            "front: {}\nwheelbase: {left: 2600 mm}",
            "front: {}\ngauge: {camber: -1 deg, toe: 1 deg}",
            "front: {left: {toe: 1 deg}\n"
        }) {
            Said said = said(text);
            assertThat(said.exit()).as(text).isEqualTo(Exit.BAD_INPUT);
            assertThat(said.err()).as(text).contains("car.yaml:").doesNotContain("Exception");
        }
    }

    @Test
    void sameFile_sameBytes_withinEightyColumns() throws IOException {
        String gauged = CAR + "gauge: {camber: 0.05 deg, toe: 0.02 deg}\n"
                + "wheelbase: {left: 2600 mm, right: 2610 mm}\ntrack: 1500 mm\n";
        assertThat(said(gauged).out()).isEqualTo(said(gauged).out());
        assertThat(said(gauged, "--json").out())
                .isEqualTo(said(gauged, "--json").out());
        assertThat(said(gauged).out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(said(gauged).out()).contains("the left front wheel stands back by 10.0 mm");
    }
}
