package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KinematicsCommandTest {
    private static final String STRUT = """
            suspension: strut
            side: left
            points:
              arm-front: [250, 400, 200]
              arm-rear: [-250, 450, 200]
              ball-joint: [0, 900, 200]
              strut-top: [-40, 700, 850]
              strut-lower: [-14, 830, 427.5]
              rod-inner: [50, 200, 250]
              rod-outer: [150, 800, 275]
              wheel-centre: [-20, 950, 313.426]
            spin-axis: [0, 150, 5]
            tyre-radius: 313.6 mm
            adjust: {bolt: {pivot: [-14, 850, 400], spacing: 60 mm}, rod: {pitch: 1.5 mm}}
            """;

    @TempDir
    Path folder;

    private Said said(String text, String... more) throws IOException {
        Path file = folder.resolve("corner.yaml");
        Files.writeString(file, text);
        String[] words = new String[more.length + 2];
        words[0] = "kinematics";
        words[1] = file.toString();
        System.arraycopy(more, 0, words, 2, more.length);
        return Said.by(words);
    }

    @Test
    void json_hasEveryAgreedKey_andTheFiguresOfOutsideCode() throws IOException {
        Said said = said(STRUT, "--from", "0mm", "--to", "40mm", "--step", "40mm", "--json");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.out())
                .contains("\"travelMm\":0", "\"camberDeg\":-1.909", "\"casterDeg\":3.5214", "\"saiDeg\":17.1027")
                .contains("\"includedDeg\":", "\"scrubMm\":-1.09", "\"trailMm\":32.30", "\"halfTrackMm\":960.44")
                .contains("\"strutMm\":442.81", "\"travelMm\":40", "\"camberDeg\":-2.797");
    }

    @Test
    void whatIsWanted_isReached_byBoltAndRodTogether() throws IOException {
        Said said = said(STRUT, "--want", "camber=+0.60deg,toe=+0.25deg", "--json");
        assertThat(said.out())
                .contains("\"boltShiftMm\":0.94", "\"rodMm\":0.14", "\"rodTurns\":0.094")
                .contains("\"camberDeg\":-1.309", "\"toeDeg\":0.25");
    }

    @Test
    void uglyFiles_getAFaultLineEach() throws IOException {
        assertThat(said("").exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said("suspension: rocket\n").exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said(STRUT.replace("ball-joint: [0, 900, 200]", "ball-joint: [0, .nan, 200]"))
                        .exit())
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(said(STRUT.replace("  rod-inner: [50, 200, 250]\n", "")).err())
                .contains("rod-inner");
        assertThat(said(STRUT.replace("rod-outer: [150, 800, 275]", "rod-outer: [50, 200, 250]"))
                        .exit())
                .isNotEqualTo(Exit.DONE);
        for (String text : new String[] {"", "suspension: rocket\n", STRUT.replace("313.6 mm", "3 m")}) {
            assertThat(said(text).err()).doesNotContain("Exception");
        }
    }

    @Test
    void pointsOnTheWrongSide_upsideDown_orAnImpossibleTyre_areRefusedWithTheirPlace() throws IOException {
        String right = STRUT.replace("side: left", "side: right");
        assertThat(said(right).exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said(right).err()).contains("check side and the sign of y");
        Said mirrored = said(STRUT.replace("rod-outer: [150, 800", "rod-outer: [150, -800"));
        assertThat(mirrored.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(mirrored.err()).contains("corner.yaml:10:", "rod-outer", "other side of the car");
        assertThat(said(STRUT.replace("[-40, 700, 850]", "[-40, 700, -850]")).err())
                .contains("z is upward");
        Said tyre = said(STRUT.replace("313.6 mm", "3 m"));
        assertThat(tyre.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(tyre.err()).contains("tyre-radius", "from 100 mm to 1000 mm");
        String radius = STRUT.replace("[0, 150, 5]", "[0, -150, 5]");
        assertThat(said(radius).err()).contains("does not point outboard");
    }

    private static final String TIES = "ties: {hose: {kind: hose, from: [-60, 560, 520], to: [-90, 790, 330],"
            + " free: 330 mm}, shaft: {kind: shaft, from: [-20, 250, 330], to: [-20, 900, 313], plunge: 25 mm}}\n";

    @Test
    void ties_sayHowFarTheHubMayHang_andWithoutALength_thatNobodyKnows() throws IOException {
        assertThat(said(STRUT + TIES).out()).contains("may drop 48 mm; then hose is at its limit", "ball");
        assertThat(said(STRUT + TIES, "--json").out()).contains("\"untilMm\":48.", "\"tie\":\"shaft\"");
        assertThat(said(STRUT + TIES.replace(", free: 330 mm", "")).out()).contains("not known", "Tie it up");
        assertThat(said(STRUT + TIES.replace("free: 330", "free: 200")).out()).contains("at its limit where it stands");
        Said faulty = said(STRUT + TIES.replace("free", "plunge").replace("kind: shaft", "kind: rope"));
        assertThat(faulty.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(faulty.err()).contains("only a shaft has plunge", "\"rope\" is not known here");
    }

    @Test
    void playAndRideHeight_giveTheShiftToExpect() throws IOException {
        assertThat(said(STRUT, "--play", "1mm", "--json").out())
                .contains("\"expect\":{\"before\":{", "\"camberDeg\":-1.2755", "\"camberDeg\":-2.543");
        assertThat(said(STRUT, "--lower", "20mm").out()).contains("camber -2.38 deg (-2°23')");
        assertThat(said(STRUT, "--play", "90mm").exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said(STRUT, "--play", "red").exit()).isEqualTo(Exit.BAD_INPUT);
    }

    @Test
    void aLowerBodyWithoutPlay_isOneRow_thatSaysLower() throws IOException {
        String[] rows = said(STRUT, "--lower", "30mm")
                .out()
                .substring(said(STRUT, "--lower", "30mm").out().indexOf("After the job"))
                .split("\n");
        assertThat(rows[0]).isEqualTo("After the job, the body 30.0 mm lower, before anything is set:");
        assertThat(rows[1]).startsWith("  now ");
        assertThat(rows[2]).startsWith("  lower ");
        assertThat(rows).hasSize(3);
        assertThat(said(STRUT, "--lower", "30mm", "--play", "1mm").out()).contains("  play, top in", "  play, top out");
    }

    @Test
    void aShiftThatNoHoleGives_isNoInstruction_andItsDoubtIsSaid() throws IOException {
        assertThat(said(STRUT, "--want", "camber=+9deg").out().replaceAll("\\s+", " "))
                .contains("It would take ", "No strut's bolt holes", "Toe shifts with it")
                .doesNotContain("Shift the bolted joint");
        assertThat(said(STRUT, "--want", "camber=+9deg", "--json").out())
                .contains("\"doubts\":[\"No strut's bolt holes");
        assertThat(said(STRUT, "--want", "camber=+0.60deg,toe=+0.25deg").out())
                .contains("Shift the bolted joint")
                .doesNotContain("No strut");
    }

    @Test
    void thePicture_isWritten_butNeverOverTheFileItself() throws IOException {
        Path picture = folder.resolve("corner.svg");
        assertThat(said(STRUT, "--svg", picture.toString()).exit()).isEqualTo(Exit.DONE);
        assertThat(Files.readString(picture)).startsWith("<svg").contains("from the front");
        assertThat(said(STRUT, "--svg", folder.resolve("corner.yaml").toString())
                        .exit())
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(said(STRUT, "--svg", folder.resolve("no/such.svg").toString())
                        .exit())
                .isEqualTo(Exit.FAILED);
    }

    @Test
    void sillyTravel_isRefused() throws IOException {
        assertThat(said(STRUT, "--step", "0mm").exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said(STRUT, "--step", "0.0001mm", "--from", "-1000mm", "--to", "1000mm")
                        .exit())
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(said(STRUT, "--want", "camber=green").exit()).isEqualTo(Exit.BAD_INPUT);
    }

    @Test
    void sameFile_sameBytes_withinEightyColumns() throws IOException {
        assertThat(said(STRUT).out()).isEqualTo(said(STRUT).out());
        assertThat(said(STRUT).out().lines()).allMatch(line -> line.length() <= 80);
    }
}
