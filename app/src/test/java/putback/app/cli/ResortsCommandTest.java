package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResortsCommandTest {
    private static final String USUAL = """
            rate: 60.00
            resorts:
              penetrant: {minutes: 3, chance: 0.35}
              heat: {minutes: 6, chance: 0.6, breaks: {chance: 0.1, price: 12.00}}
              cut: {minutes: 15, chance: 1, scraps: 18.00}
            """;

    @TempDir
    Path folder;

    @Test
    void json_hasTheAgreedKeys() throws IOException {
        Said said = said(USUAL, "--json");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .startsWith("{\"order\":[\"penetrant\",\"heat\",\"cut\"],\"expectedMinutes\":10.8,"
                        + "\"expectedCost\":\"16.26\",\"p90Minutes\":24,\"certain\":true")
                .matches("\\p{ASCII}*")
                .endsWith("}\n");
    }

    @Test
    void penetrantAfterHeat_isNotForWhatIsStillHot() throws IOException {
        Said said = said(USUAL.replace("penetrant: {minutes: 3", "penetrant: {minutes: 5"));
        assertThat(said.out())
                .contains("1. heat", "2. penetrant", "Penetrant burns: not on what is still hot.")
                .doesNotContain("wipe it off");
    }

    @Test
    void text_isNumbered_andFitsEightyColumns() throws IOException {
        Said said = said(USUAL + "  " + "x".repeat(64) + ": {minutes: 99999.9, chance: 0.00001}\n");
        assertThat(said.out())
                .contains("1. penetrant", "3. cut", "sure to work", "scraps something for 18.00")
                .contains("On average 10.8 min and 16.26 in all. Nine times in ten", "stop: take a picture")
                .contains("Penetrant burns: wipe it off");
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void withoutACertainOne_theLastLineSaysWhatIsLeft() throws IOException {
        Said said = said(USUAL.replaceAll("(?m)^  cut.*\n", ""));
        assertThat(said.out())
                .contains("pays while giving up costs more than 12.00")
                .contains("Left to decide: 26 in 100 that none of these works. Then stop and ask");
    }

    @Test
    void whatIsNear_bansWithItsReason_andHowItRefusesPicks() throws IOException {
        Said said = said(USUAL + "near: [hose, wire]\nrefuses: spins\n");
        assertThat(said.out()).contains("1. penetrant").doesNotContain("2.");
        assertThat(said.out())
                .contains("Not here:\n- heat: no flame or hot metal near hose:", "- cut: no sparks near hose:");
        Said picked = said(USUAL.replace("0.35}", "0.35, when: [stuck, in bore]}") + "refuses: spins\n", "--json");
        assertThat(picked.out()).contains("\"order\":[\"heat\",\"cut\"]", "it is not for one that is \\\"spins\\\"");
        Said harmless = said(USUAL.replace("0.6,", "0.6, hazards: [],") + "near: hose\n", "--json");
        assertThat(harmless.out()).contains("\"order\":[\"penetrant\",\"heat\"]");
    }

    @Test
    void whoMovesTheHoseAway_readsOfTheGasBehindItToo_andFirst() throws IOException {
        Said said = said(USUAL + "near: [hose, gas]\n");
        assertThat(said.out().replaceAll("\\s+", " "))
                .contains("- heat: no flame or hot metal near gas: a damper or spring filled with gas may burst"
                        + " no flame or hot metal near hose: it melts inside");
        assertThat(said(USUAL + "near: [hose, gas]\n", "--json").out())
                .contains(
                        "\"reasons\":[\"no flame or hot metal near gas: a damper or spring filled with gas may burst\","
                                + "\"no flame or hot metal near hose:");
    }

    @Test
    void heatWhereNobodySaidWhatIsNear_asksToLookFirst() throws IOException {
        Said said = said(USUAL);
        assertThat(said.out().replaceAll("\\s+", " "))
                .contains(
                        "Nobody has said what is near. Look first, before heat, cut: hose, wire, rubber, bearing, gas,"
                                + " spring, airbag, high voltage, tank,");
        assertThat(said(USUAL, "--json").out()).contains("\"cautions\":[\"Nobody has said what is near. Look first");
        assertThat(said("rate: 60\nresorts: {soak: {minutes: 1, chance: 1}}\n").out())
                .doesNotContain("Look first");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "resorts: {a: {minutes: 1, chance: 1}} | 1:1: the file has no rate",
                "rate: 0, resorts: {a: {minutes: 1, chance: 1}} | 1:8: rate: an hour has to cost more",
                "rate: -5, resorts: {a: {minutes: 1, chance: 1}} | 1:8: rate: \"-5\" is not possible",
                "rate: .nan, resorts: {a: {minutes: 1, chance: 1}} | 1:8: rate: \".nan\" is not a plain",
                "rate: 60 | 1:1: the file has no resorts",
                "rate: 60, resorts: {} | 1:12: resorts: there is no resort in it",
                "rate: 60, resorts: [a] | 1:12: resorts: this is a list",
                "rate: 60, resorts: {a: 5} | 1:25: a is a single value; write a map such as",
                "rate: 60, resorts: {a: {minutes: 1, chance: 1.1}} | 1:46: chance of resort a: \"1.1\" is not possible",
                "rate: 60, resorts: {a: {minutes: 1, chance: -0.1}} | 1:46: chance of resort a: \"-0.1\" is not possible",
                "rate: 60, resorts: {a: {minutes: 1, chance: NaN}} | 1:46: chance of resort a: \"NaN\" is not a plain",
                "rate: 60, resorts: {a: {minutes: -1, chance: 1}} | 1:35: minutes of resort a: \"-1\" is not possible",
                "rate: 60, resorts: {a: {minutes: 1}} | 1:22: resort a has no chance, which it needs",
                "rate: 60, resorts: {a: {minutes: 1, chance: 1}, a: {minutes: 1, chance: 1}} | 1:50: a is written twice",
                "rate: 60, resorts: {a: {minutes: 1, chance: 1, breaks: {chance: 1}}} | has no price, which it needs",
                "rate: 60, resorts: {a: {minutes: 1, chance: 1, when: [stukc]}} | not known here; write stuck",
                "rate: 60, resorts: {a: {minutes: 1, chance: 1}}, near: [hoes] | not known here; write hose",
                "rate: 60, resorts: {a: {minutes: 1, chance: 1, cost: 3}} | cost is not a key of resort a"
            })
    void aFault_isToldWithItsPlace(String text, String because) throws IOException {
        Said said = said("{" + text + "}");
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).startsWith(folder.resolve("r.yaml").toString() + ":");
        assertThat(said.err()).contains(because);
    }

    @Test
    void allFaults_areToldInOneGo() throws IOException {
        Said said = said("rate: 0\nwhere: here\nresorts:\n  a: {minutes: x}\n  B: {minutes: 1, chance: 3}\n");
        assertThat(said.err().lines()).hasSize(6);
    }

    @Test
    void tenThousandResorts_areAnsweredQuickly() throws IOException {
        StringBuilder file = new StringBuilder("rate: 60\nresorts:\n");
        for (int i = 0; i < 10_000; i++) {
            file.append("  r")
                    .append(i)
                    .append(": {minutes: ")
                    .append(1 + i % 977)
                    .append(", chance: 0.01}\n");
        }
        Said said = Assertions.assertTimeout(Duration.ofSeconds(10), () -> said(file.toString(), "--json"));
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.out()).startsWith("{\"order\":[\"r0\",\"r1954\",");
    }

    @Test
    void uglyFiles_areOneClearFault() throws IOException {
        assertThat(said("").err()).contains("1:1: the list of resorts is empty; it needs rate and resorts");
        assertThat(said("rate: 60\nresorts: *a").err()).contains("2:10: *a stands for nothing yet");
        assertThat(said("[".repeat(500_000)).err()).contains("nested deeper than 50 levels");
        StringBuilder bomb = new StringBuilder("a: &a [x,x,x,x,x,x,x,x,x,x]\n");
        for (char c = 'b'; c < 'j'; c++) {
            bomb.append(c).append(": &").append(c).append(" [");
            bomb.append(("*" + (char) (c - 1) + " ,").repeat(9))
                    .append("*")
                    .append((char) (c - 1))
                    .append(" ]\n");
        }
        assertThat(said(bomb.toString()).err()).contains("more than 200000 values");
        Path binary = Files.write(folder.resolve("b.yaml"), new byte[] {0, 1, 2, (byte) 0xFF});
        assertThat(Said.by("resorts", binary.toString()).err()).contains("the file is not text");
        assertThat(Said.by("resorts", folder.toString()).err()).contains("this is a folder");
        for (String name : new String[] {"", "gone.yaml", "no\0name"}) {
            Said gone = Said.by("resorts", name);
            assertThat(gone.exit()).as(name).isEqualTo(Exit.BAD_INPUT);
            assertThat(gone.err().lines()).hasSize(1);
        }
    }

    @Test
    void nearAnAirbag_noFlameAndNoBlow_howeverItIsCalled_andWhatNobodyKnowsIsSaid() throws IOException {
        Said said = said("""
                rate: 60
                near: [airbag, high voltage]
                resorts:
                  blowlamp: {minutes: 5, chance: 0.6}
                  oxy-acetylene: {minutes: 5, chance: 0.7}
                  induction: {minutes: 5, chance: 0.7}
                  angle-grinder: {minutes: 5, chance: 1}
                  airhammer: {minutes: 5, chance: 0.5}
                  grandfathers-trick: {minutes: 5, chance: 0.5}
                """);
        assertThat(said.out())
                .contains("1. grandfathers-trick", "Nobody has said whether these bring", "trained person")
                .doesNotContain("2. ");
    }

    private Said said(String text, String... more) throws IOException {
        Path file = Files.write(folder.resolve("r.yaml"), text.getBytes(StandardCharsets.UTF_8));
        String[] words = new String[2 + more.length];
        words[0] = "resorts";
        words[1] = file.toString();
        System.arraycopy(more, 0, words, 2, more.length);
        return Said.by(words);
    }
}
