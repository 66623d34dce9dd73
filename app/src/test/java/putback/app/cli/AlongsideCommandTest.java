package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.app.json.JsonTree;

@SuppressWarnings("unchecked")
class AlongsideCommandTest {
    private static Map<String, Object> json(String... words) {
        Said said = Said.by(words);
        assertThat(said.err()).isEmpty();
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        return (Map<String, Object>) JsonTree.read(said.out().strip());
    }

    private static List<Map<String, Object>> items(Map<String, Object> answer) {
        return (List<Map<String, Object>>) answer.get("items");
    }

    private static BigDecimal objective(String sheet, String renew) {
        return (BigDecimal) json("plan", sheet, "--renew", renew, "--json").get("objective");
    }

    @ParameterizedTest
    @CsvSource({"front-brake,left.disc", "twist-beam,left.damper", "front-strut,left.complete-strut"})
    void everyFigure_isADifferenceOfPlans(String sheet, String renew) {
        Map<String, Object> answer = json("alongside", sheet, "--renew", renew, "--json");
        BigDecimal base = objective(sheet, renew);
        assertThat(answer.get("objective")).isEqualTo(base);
        assertThat(items(answer)).isNotEmpty();
        for (Map<String, Object> item : items(answer)) {
            String part = String.valueOf(item.get("part"));
            if (part.equals("beam") || part.equals("subframe")) {
                continue; // each plan of these takes long
            }
            BigDecimal extra = objective(sheet, renew + "," + part).subtract(base);
            BigDecimal alone = objective(sheet, part);
            assertThat((BigDecimal) item.get("extraMinutes")).as(part).isEqualByComparingTo(extra);
            assertThat((BigDecimal) item.get("aloneMinutes")).as(part).isEqualByComparingTo(alone);
            assertThat((BigDecimal) item.get("savedMinutes")).as(part).isEqualByComparingTo(alone.subtract(extra));
        }
    }

    /** Plans of beam and subframe take long, so they are compared once each. */
    @ParameterizedTest
    @CsvSource({
        "front-brake,left.pads",
        "front-strut,left.arm",
        "twist-beam,left.spring",
        "front-strut,left.track-rod-end"
    })
    void neighboursReachedAtNoCost_addWhatTheObjectivesDifferBy_allOfThem(String sheet, String renew) {
        Map<String, Object> base = json("plan", sheet, "--renew", renew, "--json");
        List<Object> off = (List<Object>) base.get("off");
        int reached = 0;
        for (Map<String, Object> item : items(json("alongside", sheet, "--renew", renew, "--json"))) {
            String part = String.valueOf(item.get("part"));
            reached += off.contains(part) ? 1 : 0;
            Map<String, Object> both = json("plan", sheet, "--renew", renew + "," + part, "--json");
            BigDecimal extra = ((BigDecimal) both.get("objective")).subtract((BigDecimal) base.get("objective"));
            assertThat((BigDecimal) item.get("extraMinutes")).as(part).isEqualByComparingTo(extra);
            assertThat((BigDecimal) item.get("extraTotalMinutes"))
                    .as(part)
                    .isEqualByComparingTo(total(both).subtract(total(base)));
        }
        assertThat(reached).isPositive();
    }

    private static BigDecimal total(Map<String, Object> plan) {
        return (BigDecimal) ((Map<String, Object>) plan.get("minutes")).get("total");
    }

    /**
     * The cap is clipped to the wheel, so it comes off for a new wheel: 0.3 min. It is undone on wheels, and from there to
     * raised is one change on the way apart, which was no change as long as everything was undone raised.
     */
    @Test
    void aNewWheel_whereItIsOffAnyway_addsItsCap_andTheHeightAtWhichThatIsUndone() {
        Map<String, Object> wheel =
                item(json("alongside", "front-strut", "--renew", "left.arm", "--json"), "left.wheel");
        assertThat((BigDecimal) wheel.get("extraMinutes")).isEqualByComparingTo("3.3");
        assertThat((BigDecimal) wheel.get("extraTotalMinutes")).isEqualByComparingTo("0.3");
    }

    private static Map<String, Object> item(Map<String, Object> answer, String part) {
        return items(answer).stream()
                .filter(item -> part.equals(item.get("part")))
                .findFirst()
                .orElseThrow(() -> new AssertionError(part + " has no line"));
    }

    @ParameterizedTest
    @CsvSource({
        "front-strut,left.complete-strut,right.complete-strut,left.link",
        "front-brake,left.pads,right.pads,left.pad-springs",
        "twist-beam,left.spring,right.spring,left.bump-stop",
        "demo-van,right.damper,left.damper,right.bump-stop"
    })
    void otherSideOfTheAxle_andCompanions_alwaysHaveALine_andAreFlagged(
            String sheet, String renew, String other, String companion) {
        Map<String, Object> answer = json("alongside", sheet, "--renew", renew, "--json");
        assertThat(item(answer, other).get("goesWith")).isEqualTo("pair");
        assertThat(item(answer, companion).get("goesWith")).isIn("companion", null);
        Said said = Said.by("alongside", sheet, "--renew", renew);
        String usual = said.out()
                .substring(said.out().indexOf("USUALLY WITH IT"), said.out().indexOf("ALONGSIDE"));
        for (Map<String, Object> item : items(answer)) {
            boolean flagged = item.get("goesWith") != null;
            assertThat(usual.contains("\n  " + item.get("name") + " "))
                    .as("%s", item.get("part"))
                    .isEqualTo(flagged);
        }
    }

    /** Nothing of the two corners is shared but the way there, which the objective does not see when one has to be lifted. */
    @Test
    void otherSideThatSavesNothing_stillHasItsLine(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("bare.yaml");
        Files.writeString(file, """
                sheet: bare
                title: A lamp on each side
                sides: both
                setups: {height: 0, side: 0, station: 0, tool: 0}
                parts: {lamp: {pair: true}}
                joints: {clip: {joins: [lamp, body], kind: clip}}
                """);
        Map<String, Object> lamp =
                item(json("alongside", file.toString(), "--renew", "left.lamp", "--json"), "right.lamp");
        assertThat((BigDecimal) lamp.get("savedMinutes")).isEqualByComparingTo("0");
        assertThat(lamp.get("goesWith")).isEqualTo("pair");
    }

    @Test
    void items_areSortedByWhatTheySave_andNothingRenewedIsAmongThem() {
        List<Map<String, Object>> items =
                items(json("alongside", "front-strut", "--renew", "complete-strut", "--side", "left", "--json"));
        BigDecimal before = null;
        for (Map<String, Object> item : items) {
            BigDecimal saved = (BigDecimal) item.get("savedMinutes");
            assertThat(saved.signum() > 0 || item.get("goesWith") != null).isTrue();
            assertThat(before == null || before.compareTo(saved) >= 0).isTrue();
            before = saved;
        }
        assertThat(items)
                .extracting(item -> item.get("part"))
                .contains("left.link")
                .doesNotContain("left.strut", "left.spring", "left.complete-strut", "body")
                .doesNotHaveDuplicates();
        assertThat(items)
                .filteredOn(item -> "left.link".equals(item.get("part")))
                .allSatisfy(item -> {
                    assertThat(item).containsEntry("price", "18.00");
                });
    }

    @Test
    void whatShouldGoWithIt_isSaidFirst_withinEightyColumns() {
        Said said = Said.by("alongside", "demo-van", "--renew", "left.damper", "--mileage", "90000 km");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.out()).containsSubsequence("USUALLY WITH IT", "goes in pairs across", "ALONGSIDE");
        assertThat(said.out()).contains(", fails 16 in 100 (1.8 min)", "within 20000 km (12427 mi), having lasted");
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void milesAreTaken_andTheSavingIsShownInMoney() {
        String[] words = {"alongside", "demo-van", "--renew", "left.damper", "--mileage", "56000 mi", "--rate", "60"};
        assertThat(Said.by(words).out().replaceAll("\\s+", " "))
                .contains(", fails 17 in 100 (1.8 min,", " 1.77)", "90123 km (56000 mi)", "and their price.");
    }

    @Test
    void aMileage_whereTheSheetKnowsNoLife_isSaidToChangeNothing() {
        Said said = Said.by("alongside", "front-strut", "--renew", "left.strut", "--mileage", "90000 km");
        assertThat(said.out().replaceAll("\\s+", " "))
                .contains("The mileage changes nothing here: the sheet gives no life")
                .doesNotContain("fails");
    }

    @Test
    void anAxleSet_isMarked_andCostsNothingMoreWhereItsOtherSideIsBought() {
        Said said = Said.by("alongside", "demo-van", "--renew", "damper");
        assertThat(said.out()).containsPattern("Brake disc, left .* 63\\.00\\*").contains("paid once");
        Map<String, Object> disc = item(json("alongside", "demo-van", "--renew", "damper", "--json"), "left.disc");
        assertThat(disc).containsEntry("price", "63.00").containsEntry("priceNow", "63.00");
        assertThat(disc).containsEntry("sold", "axle set");
        Map<String, Object> other = item(json("alongside", "demo-van", "--renew", "left.disc", "--json"), "right.disc");
        assertThat(other).containsEntry("price", "63.00").containsEntry("priceNow", "0.00");
    }

    @Test
    void expectedSaving_isTheChanceTimesTheMinutesSaved_atTheRate() {
        Map<String, Object> answer = json(
                "alongside", "demo-van", "--renew", "left.damper", "--mileage", "90000 km", "--rate", "60", "--json");
        Map<String, Object> pads = items(answer).stream()
                .filter(item -> "left.pads".equals(item.get("part")))
                .findFirst()
                .orElseThrow();
        // 1 - exp(ln 2 (2^4 - (110/45)^4)) for a median of 45000 km and a shape of 4
        double chance = -Math.expm1(Math.log(2) * (16 - Math.pow(110.0 / 45, 4)));
        assertThat(((BigDecimal) pads.get("failsChance")).doubleValue()).isBetween(chance - 1e-4, chance + 1e-4);
        double saved = chance * ((BigDecimal) pads.get("savedMinutes")).doubleValue();
        assertThat(new BigDecimal(String.valueOf(pads.get("expectedSaving"))).doubleValue())
                .isBetween(saved - 0.01, saved + 0.01);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--mileage|90000|has no unit",
                "--mileage|-5 km|a mileage of -5 km (-3 mi) is not possible",
                "--mileage|90000000 km|a mileage of 90000000 km (55923407 mi) is not possible",
                "--mileage|56000 m|is in metres, which no odometer counts; if miles are meant write mi",
                "--horizon|0 km|looks nowhere",
                "--rate|NaN|is not a plain number",
                "--rate|60|--rate says nothing without --mileage",
                "--horizon|5000 km|--horizon says nothing without --mileage",
                "--rate|-1|--rate is an amount of money",
                "--side|up|--side is left, right or both"
            })
    void badInput_isTold(String option, String value, String because) {
        Said said = Said.by("alongside", "front-brake", "--renew", "disc", option, value);
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains(because);
    }

    @Test
    void unknownPart_isBadInput_andALockIsSaid() {
        assertThat(Said.by("alongside", "front-brake", "--renew", "strut").exit())
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(Said.by("alongside", "front-brake").exit()).isEqualTo(Exit.BAD_INPUT);
    }
}
