package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static putback.app.cli.PriceAnswers.json;
import static putback.app.cli.PriceAnswers.list;
import static putback.app.cli.PriceAnswers.money;
import static putback.app.cli.PriceAnswers.time;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@SuppressWarnings("unchecked")
class PriceCommandTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "demo-van,damper,0,0",
        "demo-van,pads,3,20",
        "front-strut,complete-strut,2,19.6",
        "front-brake,disc,4,7.75"
    })
    void lines_addUpToTheTotal_andSoDoItsThreeParts(String sheet, String renew, String rust, String tax) {
        Map<String, Object> answer = json(
                "price",
                sheet,
                "--renew",
                renew,
                "--rust",
                rust,
                "--tax",
                tax,
                "--rate",
                "57.35",
                "--markup",
                "12.5",
                "--sundries",
                "3.99",
                "--json");
        BigDecimal sum = BigDecimal.ZERO;
        for (Map<String, Object> line : list(answer, "lines")) {
            sum = sum.add(new BigDecimal(String.valueOf(line.get("amount"))));
        }
        assertThat(money(answer, "total")).isEqualTo(sum);
        assertThat(money(answer, "labour").add(money(answer, "parts")).add(money(answer, "tax")))
                .isEqualTo(sum);
        assertThat(time(answer, "p50Minutes")).isLessThan(time(answer, "p80Minutes"));
        assertThat(time(answer, "p80Minutes")).isLessThan(time(answer, "p95Minutes"));
    }

    @Test
    void risk_isSorted_andWithTheRestMakesAll() {
        Map<String, Object> answer = json("price", "demo-van", "--renew", "damper", "--rust", "2", "--json");
        double before = 1;
        double sum = 0;
        List<Map<String, Object>> joints = list(answer, "risk");
        for (Map<String, Object> one : joints.subList(0, joints.size() - 1)) {
            double share = ((BigDecimal) one.get("share")).doubleValue();
            assertThat(share).isLessThanOrEqualTo(before);
            before = share;
            sum += share;
        }
        for (Map<String, Object> one : list(answer, "otherRisk")) {
            sum += ((BigDecimal) one.get("share")).doubleValue();
        }
        assertThat(sum).isBetween(0.99, 1.01);
    }

    @Test
    void rust_takesLonger_gradeByGrade_andCleanHasNoSeizures() {
        double before = 0;
        for (int grade = 0; grade <= 4; grade++) {
            Map<String, Object> answer =
                    json("price", "front-strut", "--renew", "strut", "--rust", String.valueOf(grade), "--json");
            assertThat(time(answer, "meanMinutes")).isGreaterThan(before);
            before = time(answer, "meanMinutes");
            boolean clean = grade == 0;
            assertThat(list(answer, "shelf").isEmpty() || !clean).isTrue();
            Map<String, Object> soak = (Map<String, Object>) answer.get("soak");
            assertThat(((List<Object>) soak.get("joints")).isEmpty()).isEqualTo(clean);
            assertThat(((BigDecimal) soak.get("savesMinutes")).signum()).isEqualTo(clean ? 0 : 1);
        }
    }

    @Test
    void shares_sumToTheLeastWorkOfAll_andLabourIsSplitByThem() {
        Map<String, Object> answer = json(
                "price",
                "demo-van",
                "--job",
                "left.damper,left.spring",
                "--job",
                "left.disc",
                "--job",
                "left.pads",
                "--json");
        BigDecimal sum = BigDecimal.ZERO;
        for (Map<String, Object> one : list(answer, "shares")) {
            sum = sum.add((BigDecimal) one.get("minutes"));
            assertThat((BigDecimal) one.get("minutes")).isLessThanOrEqualTo((BigDecimal) one.get("alone"));
        }
        Map<String, Object> plan =
                json("plan", "demo-van", "--renew", "left.damper,left.spring,left.disc,left.pads", "--json");
        assertThat(sum).isEqualByComparingTo((BigDecimal) ((Map<String, Object>) plan.get("minutes")).get("work"));
        List<Map<String, Object>> labour = list(answer, "lines").subList(0, 3);
        BigDecimal minutes = BigDecimal.ZERO;
        for (Map<String, Object> line : labour) {
            assertThat(String.valueOf(line.get("text"))).startsWith("Labour: ");
            minutes = minutes.add((BigDecimal) line.get("quantity"));
        }
        assertThat(minutes.doubleValue())
                .isBetween(time(answer, "p50Minutes") - 0.51, time(answer, "p50Minutes") + 0.51);
    }

    @Test
    void ceiling_isAChance_andBelowThePartsItIsOne_andSaid() {
        String[] words = {"price", "front-brake", "--renew", "disc", "--json"};
        assertThat(json(words).get("chanceOverCeiling")).isNull();
        double before = 1;
        for (String ceiling : new String[] {"0", "40", "110", "120", "130", "200"}) {
            List<String> more = new ArrayList<>(List.of(words));
            more.addAll(List.of("--ceiling", ceiling));
            Map<String, Object> answer = json(more.toArray(new String[0]));
            double over = ((BigDecimal) answer.get("chanceOverCeiling")).doubleValue();
            assertThat(over).as(ceiling).isLessThanOrEqualTo(before);
            before = over;
            boolean below = new BigDecimal(ceiling).compareTo(money(answer, "parts")) < 0;
            assertThat(over == 1).as(ceiling).isEqualTo(below);
            assertThat(String.valueOf(answer.get("notes")).contains("above the ceiling"))
                    .as(ceiling)
                    .isEqualTo(below);
        }
        Said said = Said.by("price", "front-brake", "--renew", "disc", "--ceiling", "1");
        assertThat(said.out()).contains("Above the ceiling of 1.00: for sure.");
    }

    @Test
    void text_isWithinEightyColumns_andSaysOddsAsAPersonDoes() {
        Said said = Said.by(
                "price",
                "demo-van",
                "--job",
                "damper",
                "--job",
                "disc",
                "--rust",
                "3",
                "--tax",
                "20",
                "--ceiling",
                "400");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.out())
                .contains(
                        "4 jobs in 5 are done, or stopped to ask, within",
                        "Stop and call before: 1 in 20",
                        "SOAK THE NIGHT BEFORE",
                        "Keep it off discs, pads, tyres and rubber")
                .contains("FAIR SHARES OF THE WORK", "HAVE READY, MAY BE NEEDED", "Above the ceiling of 400.00:")
                .doesNotContain("P80", "NaN");
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void aRustyCarsEstimate_saysAboveItsFigures_howManyJobsEndWhereNothingMoves_andHowThoseCount() {
        Said said = Said.by("price", "front-strut", "--renew", "strut", "--rust", "4", "--ceiling", "500");
        String text = said.out().replaceAll("\\s+", " ");
        assertThat(text)
                .containsPattern(
                        "\\d\\d jobs in 100 end at a fixing that will not move whatever is tried: stop there and ask")
                .contains("the odds of passing a ceiling too, counts such a job as if the last try had worked")
                .doesNotContain("resort", "4 jobs in 5 take");
        assertThat(text.indexOf("jobs in 100 end at")).isLessThan(text.indexOf("ESTIMATE amount"));
        assertThat(Said.by("price", "front-strut", "--renew", "strut", "--rust", "4", "--json")
                        .out())
                .contains("\"beatenCountedAs\":\"as if the last try had worked\"");
    }

    @Test
    void aCleanCarsEstimate_saysNothingOfFixingsThatWillNotMove() {
        Said said = Said.by("price", "front-strut", "--renew", "strut", "--rust", "0");
        assertThat(said.out()).contains("4 jobs in 5 take no more than").doesNotContain("will not move whatever");
    }

    @Test
    void theSameQuestion_hasTheSameAnswer() {
        String[] words = {"price", "front-brake", "--renew", "disc", "--rust", "2", "--json"};
        assertThat(Said.by(words).out()).isEqualTo(Said.by(words).out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--renew disc --rate NaN|--rate is an amount of money",
                "--renew disc --rate 0|--rate is an amount of money",
                "--renew disc --rate -5|--rate is an amount of money",
                "--renew disc --tax -1|--tax is a number of percent, 0 to 100",
                "--renew disc --tax 101|--tax is a number of percent, 0 to 100",
                "--renew disc --ceiling -1|--ceiling is an amount of money",
                "--renew disc --ceiling x|is not a plain number",
                "--renew disc --rust 5|--rust: rust 5 is not a grade; it is 0 (clean) to 4",
                "--renew disc --rust 1.5|is not a grade; it is a whole number from 0 (clean) to 4",
                "--renew disc --rust left=|is not a grade",
                "--renew disc --rust nose=2|no side or fixing is called nose",
                "--renew disc --rust 2,3|a grade for the whole car is given twice",
                "--renew disc --rust left=2,left=2|the grade of left is given twice",
                "--renew disc --hands 0|--hands is a whole number of people, 1 to 9",
                "--renew disc --hands 10|--hands is a whole number of people, 1 to 9",
                "--renew disc --hands 1.5|--hands is a whole number of people, 1 to 9",
                "--renew disc --rate 60.005|which has more than 2 decimals",
                "--renew disc --ceiling 1.001|which has more than 2 decimals",
                "--renew disc --sundries 0.001|which has more than 2 decimals",
                "--renew disc --subcontracted 0.001|which has more than 2 decimals",
                "--renew disc --tax-on both|--tax-on is sum or line, not \"both\"",
                "--renew disc --pdf no/such/x.pdf|there is no folder",
                "--renew disc --pdf x.pdf --json|--json and --pdf do not go together",
                "--renew disc --on 2026-11-02|--on goes with --pdf FILE",
                "--renew disc --paper letter|--paper goes with --pdf FILE",
                "--renew disc --seed x|--seed is a whole number",
                "--renew disc --job pads|--renew and --job do not go together",
                "--job disc --job strut|no part or unit is called strut",
                "--job disc --job ,|--job names nothing",
                "--rust 1|say what is to be renewed"
            })
    void badInput_isTold(String options, String because) {
        List<String> words = new ArrayList<>(List.of("price", "front-brake"));
        words.addAll(List.of(options.split(" ", -1)));
        Said said = Said.by(words.toArray(new String[0]));
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains(because);
    }

    @Test
    void tenThousandDifferentJobs_areTooMany_andRefusedAtOnce() {
        List<String> words = new ArrayList<>(List.of("price", "front-brake"));
        for (int i = 0; i < 10_000; i++) {
            words.addAll(List.of("--job", "disc" + i));
        }
        Said said = Said.by(words.toArray(new String[0]));
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains("10000 jobs are too many to share fairly; it may be 60");
    }

    @Test
    void theSameJobTenThousandTimes_countsOnce_andThatIsSaid() {
        List<String> words = new ArrayList<>(List.of("price", "front-brake", "--json"));
        for (int i = 0; i < 10_000; i++) {
            words.addAll(List.of("--job", i % 2 == 0 ? "disc" : "right.disc,left.disc"));
        }
        Map<String, Object> answer = json(words.toArray(new String[0]));
        assertThat(answer.get("total"))
                .isEqualTo(json("price", "front-brake", "--renew", "disc", "--json")
                        .get("total"));
        assertThat(String.valueOf(answer.get("notes"))).contains("named as 10000 jobs", "counts once");
    }

    @Test
    void moreThanTwelveJobs_areDrawn_eachWithItsError_andStillAddUp() {
        List<String> words = new ArrayList<>(List.of("price", "front-brake", "--json"));
        for (String part : new String[] {"disc", "pads", "caliper", "caliper-bracket", "hose", "wear-wire", "wheel"}) {
            words.addAll(List.of("--job", "left." + part, "--job", "right." + part));
        }
        Map<String, Object> answer = json(words.toArray(new String[0]));
        BigDecimal minutes = BigDecimal.ZERO;
        BigDecimal amounts = BigDecimal.ZERO;
        boolean unsure = false;
        for (Map<String, Object> share : list(answer, "shares")) {
            minutes = minutes.add((BigDecimal) share.get("minutes"));
            amounts = amounts.add(new BigDecimal(String.valueOf(share.get("amount"))));
            unsure |= ((BigDecimal) share.get("errorMinutes")).signum() > 0;
        }
        assertThat(list(answer, "shares")).hasSize(14);
        assertThat(unsure).isTrue();
        assertThat(answer.get("sharesExact")).isEqualTo(false);
        assertThat(amounts).isEqualTo(money(answer, "total"));
        List<String> all = new ArrayList<>();
        for (Map<String, Object> share : list(answer, "shares")) {
            all.addAll((List<String>) share.get("job"));
        }
        Map<String, Object> plan = json("plan", "front-brake", "--renew", String.join(",", all), "--json");
        assertThat(minutes).isEqualByComparingTo((BigDecimal) ((Map<String, Object>) plan.get("minutes")).get("work"));
    }

    @ParameterizedTest
    @CsvSource({
        "sum,demo-van,damper,spring,pads",
        "line,demo-van,left.damper,right.disc,spring",
        "sum,front-strut,complete-strut,link,arm"
    })
    void amountsOfTheJobs_addUpToTheTotal_andEachAloneIsWhatItsOwnPriceSays(
            String taxOn, String sheet, String first, String second, String third) {
        String[] terms = {
            "--rust", "2", "--tax", "19.6", "--tax-on", taxOn, "--markup", "12.5", "--sundries", "7.77", "--json"
        };
        List<String> words = new ArrayList<>(List.of("price", sheet, "--job", first, "--job", second, "--job", third));
        words.addAll(List.of(terms));
        Map<String, Object> answer = json(words.toArray(new String[0]));
        BigDecimal sum = BigDecimal.ZERO;
        String[] jobs = {first, second, third};
        for (int i = 0; i < jobs.length; i++) {
            Map<String, Object> share = list(answer, "shares").get(i);
            BigDecimal amount = new BigDecimal(String.valueOf(share.get("amount")));
            BigDecimal alone = new BigDecimal(String.valueOf(share.get("amountAlone")));
            sum = sum.add(amount);
            List<String> one = new ArrayList<>(List.of("price", sheet, "--renew", jobs[i]));
            one.addAll(List.of(terms));
            assertThat(alone).isEqualTo(money(json(one.toArray(new String[0])), "total"));
            assertThat(String.valueOf(answer.get("notes")).contains("The amount of "))
                    .as("told exactly where it is so")
                    .isEqualTo(amount.compareTo(alone) > 0);
        }
        assertThat(sum).isEqualTo(money(answer, "total"));
    }

    @Test
    void stopAndCall_isNeverAboveTheCeiling_andSaysWhichOfTheTwoItIs() {
        for (String ceiling : new String[] {"0", "60", "100.01", "111.37", "123", "150", "1000"}) {
            Map<String, Object> answer = json(
                    "price",
                    "front-brake",
                    "--renew",
                    "disc",
                    "--rust",
                    "2",
                    "--tax",
                    "19.6",
                    "--rate",
                    "61.30",
                    "--ceiling",
                    ceiling,
                    "--json");
            Map<String, Object> figures = (Map<String, Object>) answer.get("figures");
            Map<String, Object> stop = (Map<String, Object>) figures.get("stopAndCall");
            BigDecimal total = new BigDecimal(String.valueOf(stop.get("total")));
            assertThat(total).as(ceiling).isLessThanOrEqualTo(new BigDecimal(ceiling));
            assertThat(total.scale()).as(ceiling).isEqualTo(2);
            assertThat(figures.get("stopAndCallBy")).as(ceiling).isEqualTo(ceiling.equals("1000") ? "time" : "ceiling");
        }
        Said said = Said.by("price", "front-brake", "--renew", "disc", "--rust", "2", "--ceiling", "123");
        assertThat(said.out()).contains("Stop and call before: the ceiling is reached", "the ceiling comes first");
        assertThat(Said.by("price", "front-brake", "--renew", "disc", "--ceiling", "1000")
                        .out())
                .contains("Stop and call before: 1 in 20 takes longer");
    }

    @Test
    void terms_areRepeatedAsTheyWereUsed_withTheSheetAndWhatHasNoPrice() {
        Map<String, Object> answer = json(
                "price",
                "front-strut",
                "--renew",
                "strut",
                "--rate",
                "61.3",
                "--tax",
                "7.75",
                "--rust",
                "1,left=4,strut-to-hub=2",
                "--ceiling",
                "900",
                "--markup",
                "3",
                "--json");
        assertThat(answer.get("sheet")).isEqualTo("front-strut");
        Map<String, Object> terms = (Map<String, Object>) answer.get("terms");
        assertThat(terms)
                .containsEntry("ratePerHour", "61.3")
                .containsEntry("taxPercent", "7.75")
                .containsEntry("taxOn", "sum")
                .containsEntry("markupPercent", "3")
                .containsEntry("sundries", "0")
                .containsEntry("ceiling", "900")
                .containsEntry("rust", BigDecimal.ONE);
        assertThat((Map<String, Object>) terms.get("rustOf"))
                .containsEntry("left", new BigDecimal("4"))
                .containsEntry("left.strut-to-hub", new BigDecimal("2"))
                .containsEntry("right.strut-to-hub", new BigDecimal("2"))
                .hasSize(3);
        assertThat(list(answer, "unpriced")).isNotEmpty();
        for (Map<String, Object> one : list(answer, "unpriced")) {
            assertThat(String.valueOf(answer.get("notes"))).contains(String.valueOf(one.get("name")));
        }
    }

    @Test
    void riskList_endsWithALineForTheRest_andMakesExactlyOne() {
        for (String rust : new String[] {"0", "2", "4"}) {
            Map<String, Object> answer = json("price", "demo-van", "--renew", "damper", "--rust", rust, "--json");
            BigDecimal sum = BigDecimal.ZERO;
            for (Map<String, Object> one : list(answer, "risk")) {
                sum = sum.add((BigDecimal) one.get("share"));
            }
            assertThat(sum).isEqualByComparingTo("1");
            List<Map<String, Object>> risk = list(answer, "risk");
            assertThat(risk.get(risk.size() - 1).get("joint")).isNull();
            String text = Said.by("price", "demo-van", "--renew", "damper", "--rust", rust)
                    .out();
            String part = text.substring(text.indexOf("WHAT MAKES IT UNSURE"));
            part = part.substring(0, part.indexOf("\n\n"));
            int percent = part.lines()
                    .filter(line -> line.endsWith(" %"))
                    .mapToInt(line -> Integer.parseInt(line.replaceAll(".*\\D(\\d+) %$", "$1")))
                    .sum();
            assertThat(percent).isEqualTo(100);
        }
    }
}
