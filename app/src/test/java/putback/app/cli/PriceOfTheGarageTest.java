package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static putback.app.cli.PriceAnswers.json;
import static putback.app.cli.PriceAnswers.list;
import static putback.app.cli.PriceAnswers.money;
import static putback.app.cli.PriceAnswers.time;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prices by the grades, the place, the figures and the resorts of a garage of one's own. */
@SuppressWarnings("unchecked")
class PriceOfTheGarageTest {
    @TempDir
    Path folder;

    @Test
    void gradesByFixing_changeOnlyThatFixing() {
        String[] words = {"price", "front-strut", "--renew", "complete-strut", "--json", "--rust"};
        double all = mean(words, "3");
        assertThat(mean(words, "3,left=3,strut-to-hub=3")).isEqualTo(all);
        assertThat(mean(words, "0,left=3,right=3")).isLessThanOrEqualTo(all);
        double without = mean(words, "3,left.strut-to-hub=0");
        assertThat(without).isLessThan(all);
        assertThat(mean(words, "3,right.strut-to-hub=0")).isEqualTo(without);
        Map<String, Object> answer =
                json("price", "front-strut", "--renew", "complete-strut", "--json", "--rust", "left.strut-to-hub=3");
        Map<String, Object> soak = (Map<String, Object>) answer.get("soak");
        assertThat((List<Object>) soak.get("joints")).containsExactly("left.strut-to-hub");
    }

    @Test
    void place_saysWhatIsStillMissing_andFromWhereANewApprovalIsNeeded() {
        Said said = Said.by("price", "front-brake", "--renew", "disc", "--place", "ontario");
        assertThat(said.out())
                .contains("STILL MISSING FOR AN ESTIMATE IN ONTARIO", "- the VIN", "- the mileage")
                .contains("Not legal advice", "O.Reg. 17/05", "at least 90 days")
                .doesNotContain("- what an hour costs");
        Map<String, Object> answer =
                json("price", "front-brake", "--renew", "disc", "--place", "michigan", "--tax", "20", "--json");
        Map<String, Object> place = (Map<String, Object>) answer.get("place");
        assertThat((List<Object>) place.get("missing")).containsExactly("part condition", "mechanic");
        BigDecimal share =
                money(answer, "total").multiply(new BigDecimal("0.1")).min(BigDecimal.TEN);
        assertThat(money(place, "approvedUpTo"))
                .isEqualByComparingTo(money(answer, "total").add(share).setScale(2, java.math.RoundingMode.HALF_UP));
        assertThat(place.get("warranty")).isNull();
    }

    @Test
    void placeThatIsNotSet_leavesEveryFieldBlank() {
        Map<String, Object> answer = json("price", "front-brake", "--renew", "disc", "--json");
        Map<String, Object> place = (Map<String, Object>) answer.get("place");
        assertThat(place.get("id")).isEqualTo("not-set");
        for (String key : new String[] {
            "name",
            "currency",
            "before",
            "writtenConsent",
            "overPercent",
            "overAmount",
            "approvedUpTo",
            "beyond",
            "oldParts",
            "warranty",
            "source"
        }) {
            assertThat(place).containsKey(key);
            assertThat(place.get(key)).as(key).isNull();
        }
        assertThat((List<Object>) place.get("missing")).isEmpty();
        assertThat(Said.by("price", "front-brake", "--renew", "disc").out()).doesNotContain("STILL MISSING");
    }

    @Test
    void placeOfOnesOwn_isAFile_andItsFaultsAreTold() throws IOException {
        Path file = folder.resolve("our-town.yaml");
        Files.writeString(file, "place: our-town\nname: Our town\nsource: the guild's leaflet\ncarries: [odometr]\n");
        Said wrong = Said.by("price", "front-brake", "--renew", "disc", "--place", file.toString());
        assertThat(wrong.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(wrong.err()).contains("our-town.yaml:4", "odometer");
        Files.writeString(file, "place: our-town\nname: Our town\nsource: the guild's leaflet\ncarries: [odometer]\n");
        assertThat(Said.by("price", "front-brake", "--renew", "disc", "--place", file.toString())
                        .out())
                .contains("IN OUR TOWN", "- the mileage");
        assertThat(Said.by("price", "front-brake", "--renew", "disc", "--place", "atlantis")
                        .err())
                .contains("no such file", "or the id of a place");
    }

    /** Two bolts that are seized with 0.3 each, assumed; 9 of 10 seen makes (3 + 9) / 20 = 0.6. Opening 1 min, seen as 4. */
    @Test
    void ownFigures_moveTheEstimate_andTheirWeightIsShown() throws IOException {
        String car =
                sheet("resorts: {saw: {minutes: 20, chance: 1}}\njoints: {bolt: {joins: [bracket, body], kind: bolt, "
                        + "count: 2, exposure: 0.5, minutes: {open: 1, close: 2, spread: 0}, resorts: [saw]}}\n");
        Path seen = folder.resolve("seen.jsonl");
        Files.writeString(
                seen,
                "{\"joint\":\"bolt\",\"rust\":4,\"of\":10,\"seized\":9}\n"
                        + "{\"joint\":\"bolt\",\"rust\":1,\"of\":50,\"seized\":0}\n"
                        + "{\"joint\":\"bolt\",\"do\":\"open\",\"minutes\":5,\"interruptedMinutes\":1}\n".repeat(4));
        String[] words = {"price", car, "--renew", "bracket", "--rust", "4", "--learnt", seen.toString(), "--json"};
        Map<String, Object> answer = json(words);
        List<Map<String, Object>> learnt = list(answer, "learnt");
        assertThat(learnt).hasSize(2);
        assertThat(learnt.get(0))
                .containsEntry("of", "bolt")
                .containsEntry("what", "opening")
                .containsEntry("assumed", new BigDecimal("1.00"))
                .containsEntry("used", new BigDecimal("2.00"))
                .containsEntry("own", new BigDecimal("4"));
        assertThat(learnt.get(1))
                .containsEntry("what", "seized")
                .containsEntry("assumed", new BigDecimal("0.3000"))
                .containsEntry("used", new BigDecimal("0.6000"))
                .containsEntry("own", BigDecimal.TEN);
        double without = time(json("price", car, "--renew", "bracket", "--rust", "4", "--json"), "meanMinutes");
        assertThat(without).isEqualTo(3.3 + 2 * 0.3 * 20);
        assertThat(time(answer, "meanMinutes")).isGreaterThan(without + 2 * 0.3 * 20);
        Said said = Said.by("price", car, "--renew", "bracket", "--rust", "4", "--learnt", seen.toString());
        assertThat(said.out())
                .contains("WHAT YOU HAVE SEEN YOURSELF", "your own 4 of these", "your own 10 of these")
                .contains("Everything that is not listed is an assumption");
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void fileOfOwnFigures_withFaults_isTold() throws IOException {
        Path seen = folder.resolve("seen.jsonl");
        Files.writeString(seen, "{\"joint\":\"bolt\"}\n");
        Said said = Said.by("price", "front-brake", "--renew", "disc", "--learnt", seen.toString());
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains("seen.jsonl:1", "has do and minutes, or rust, of and seized");
    }

    private static double mean(String[] words, String rust) {
        List<String> all = new ArrayList<>(List.of(words));
        all.add(rust);
        return time(json(all.toArray(new String[0])), "meanMinutes");
    }

    private String sheet(String more) throws IOException {
        Path file = folder.resolve("s.yaml");
        Files.write(
                file,
                ("sheet: s\ntitle: One bracket\nparts: {bracket: {price: 10.00}}\ntimes: {spread: 0, common: 0}\n"
                                + "setups: {height: 0, side: 0, station: 0, tool: 0}\n" + more)
                        .getBytes(StandardCharsets.UTF_8));
        return file.toString();
    }

    private Map<String, Object> bracket(String resorts, String joint) throws IOException {
        String file = sheet(resorts + "joints: {bolt: {joins: [bracket, body], kind: bolt, count: 2, exposure: 0.5, "
                + "minutes: {open: 1, close: 2, spread: 0}" + joint + "}}\n");
        return json("price", file, "--renew", "bracket", "--rust", "4", "--json");
    }

    /** Two bolts, each seized with 0.6 x 0.5 = 0.3; handling takes 0.3 min, opening 1 and closing 2. */
    @Test
    void aSheetsOwnResort_isReckonedByHand() throws IOException {
        String resorts = "resorts: {saw: {minutes: 20, chance: 1, scraps: 3.00}}\n";
        Map<String, Object> answer = bracket(resorts, ", resorts: [saw]");
        assertThat(time(answer, "meanMinutes")).isEqualTo(3.3 + 2 * 0.3 * 20);
        assertThat(answer.get("expectedDamage")).isEqualTo("1.80");
        assertThat((BigDecimal) answer.get("chanceBeatsAllResorts")).isEqualByComparingTo("0");
        Map<String, Object> bolt = list(answer, "shelf").get(0);
        assertThat(bolt).containsEntry("part", "bolt").containsEntry("price", "3.00");
        assertThat((BigDecimal) bolt.get("chance")).isEqualByComparingTo("0.51");
        Map<String, Object> single = bracket(resorts, ", resorts: [saw], once: true");
        assertThat(single.get("expectedDamage")).isEqualTo("0.00");
        assertThat(list(single, "shelf")).isEmpty();
    }

    /** Penetrant works 35 in 100, after a night 1 - 0.65 x 0.65; then the saw. */
    @Test
    void soaking_savesWhatTheSawWouldHaveTaken() throws IOException {
        Map<String, Object> answer =
                bracket("resorts: {saw: {minutes: 20, chance: 1}}\n", ", resorts: [penetrant, saw]");
        Map<String, Object> soak = (Map<String, Object>) answer.get("soak");
        assertThat((List<Object>) soak.get("joints")).containsExactly("bolt");
        double each = 0.65 * 20 - 0.65 * 0.65 * 20;
        assertThat(((BigDecimal) soak.get("savesMinutes")).doubleValue())
                .isBetween(2 * 0.3 * each - 0.01, 2 * 0.3 * each + 0.01);
    }

    @Test
    void aResortThatNobodyDescribes_andASpreadTooWide_areTold() throws IOException {
        String start = "joints: {bolt: {joins: [bracket, body], kind: bolt, minutes: {open: 1, close: 1, spread: ";
        Said wide = Said.by("price", sheet(start + "2}}}\n"), "--renew", "bracket");
        assertThat(wide.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(wide.err()).contains("step bolt has a spread of 2.0");
        Said unknown =
                Said.by("price", sheet(start + "0}, resorts: [prayer]}}\n"), "--renew", "bracket", "--rust", "1");
        assertThat(unknown.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(unknown.err()).contains("names the resort prayer, which is neither a usual one nor");
    }

    /** Each holds the cover, so that only both together let it go, and its handling of 10 min is shared. */
    @Test
    void aShareAboveWhatAJobTakesAlone_isPointedOut() throws IOException {
        Path file = folder.resolve("two.yaml");
        Files.writeString(file, """
                sheet: two
                title: A cover on two brackets
                parts: {front: {}, rear: {}, cover: {minutes: 10}}
                joints:
                  front-bolt: {joins: [front, body], kind: bolt}
                  rear-bolt: {joins: [rear, body], kind: bolt}
                  front-clip: {joins: [front, cover], kind: clip}
                  rear-clip: {joins: [rear, cover], kind: clip}
                """);
        Map<String, Object> answer = json("price", file.toString(), "--job", "front", "--job", "rear", "--json");
        for (Map<String, Object> one : list(answer, "shares")) {
            assertThat((BigDecimal) one.get("minutes"))
                    .isEqualByComparingTo(((BigDecimal) one.get("alone")).add(BigDecimal.valueOf(5)));
        }
        assertThat(String.valueOf(answer.get("notes")))
                .contains("The share of Front is above what it takes alone", "The share of Rear is above");
    }
}
