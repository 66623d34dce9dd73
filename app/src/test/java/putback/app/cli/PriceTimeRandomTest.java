package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.labour.price.Beliefs;
import putback.labour.price.Estimate;
import putback.labour.price.Estimating;
import putback.labour.price.Job;
import putback.labour.price.Terms;
import putback.labour.seized.Refusal;
import putback.labour.seized.Row;
import putback.labour.seized.RustGrade;
import putback.labour.seized.RustGrades;
import putback.labour.seized.Seized;
import putback.labour.seized.Surroundings;
import putback.labour.seized.UsualResorts;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.Wanted;
import putback.plan.selection.WantedNames;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.quantity.Parsed;
import putback.sheet.Joint;
import putback.sheet.Side;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** The time of a job against throwing dice for every step, fastener and resort of it. */
class PriceTimeRandomTest {
    private static final int DRAWS = 100_000;
    private static final BigDecimal RATE = new BigDecimal("60.00");
    private static final long SEED = 20_260_101;

    @ParameterizedTest
    @CsvSource({"demo-van,damper,0", "demo-van,damper,3", "front-brake,caliper,4"})
    void mean_percentiles_andChances_areThoseOfTheDice(String sheet, String renew, int grade) {
        Plan plan = plan(sheet, renew);
        Terms plain = Terms.of(RATE);
        double[] drawn = drawn(plan, RustGrade.values()[grade]);
        double middle = drawn[DRAWS * 7 / 10];
        Terms terms = new Terms(
                RATE,
                plain.taxPercent(),
                false,
                plain.markupPercent(),
                plain.sundries(),
                plain.subcontracted(),
                BigDecimal.valueOf(middle).add(parts(plan)));
        Parsed<Estimate> parsed = Estimating.of(
                plan,
                List.of(new Job("all", plan.wanted())),
                Beliefs.of(RustGrades.all(RustGrade.values()[grade])),
                terms,
                1);
        Estimate estimate = ((Parsed.Value<Estimate>) parsed).value();
        String seed = "seed " + SEED;
        assertThat(estimate.time().mean())
                .as(seed)
                .isCloseTo(Arrays.stream(drawn).average().orElseThrow(), within(0.01));
        for (double chance : new double[] {0.5, 0.8, 0.95}) {
            assertThat(estimate.time().quantile(chance))
                    .as("%s, %s", seed, chance)
                    .isCloseTo(drawn[(int) (chance * DRAWS)], within(0.015));
        }
        Double over = estimate.chanceOverCeiling();
        assertThat(over == null ? -1 : over).as(seed).isBetween(0.29, 0.31);
    }

    private static org.assertj.core.data.Percentage within(double share) {
        return org.assertj.core.data.Percentage.withPercentage(100 * share);
    }

    private static BigDecimal parts(Plan plan) {
        BigDecimal sum = BigDecimal.ZERO;
        for (var need : plan.parts()) {
            BigDecimal price = need.price();
            sum = price == null ? sum : sum.add(price);
        }
        return sum;
    }

    private static Plan plan(String sheet, String renew) {
        Read.Sheet read = (Read.Sheet) SheetReader.open(sheet);
        Wanted wanted = ((WantedNames.Understood.Clear)
                        WantedNames.understand(read.assembly(), List.of(renew), Set.of(Side.LEFT, Side.RIGHT)))
                .wanted();
        return ((Planned.Sound) Planner.plan(read.assembly(), wanted)).plan();
    }

    /** Sorted minutes of many jobs. */
    private static double[] drawn(Plan plan, RustGrade grade) {
        Random random = new Random(SEED);
        List<double[]> steps = steps(plan);
        Map<Joint, Row> rows = new HashMap<>();
        for (Step step : plan.steps()) {
            Joint joint = step.joint();
            if (joint != null && step.act() == Act.UNDO && grade.seizedEach(joint) > 0) {
                Seized seized = new Seized(
                        RATE,
                        UsualResorts.of(new BigDecimal("5.00")),
                        Refusal.STUCK,
                        Surroundings.of(plan.assembly(), joint));
                rows.put(joint, ((Parsed.Value<Row>) seized.answer()).value());
            }
        }
        List<Dice> dice = new ArrayList<>();
        rows.forEach((joint, row) -> {
            for (int i = 0; i < joint.fastener().count(); i++) {
                dice.add(Dice.of(grade.seizedEach(joint), row, joint.entry().spread()));
            }
        });
        double common = plan.assembly().sheet().times().common();
        double[] drawn = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double sum = 0;
            for (double[] step : steps) {
                sum += step[0] * Math.exp(step[1] * random.nextGaussian());
            }
            for (Dice one : dice) {
                sum += one.thrown(random);
            }
            drawn[i] = sum * Math.exp(common * random.nextGaussian());
        }
        Arrays.sort(drawn);
        return drawn;
    }

    /** Median and spread of everything that is drawn by itself. */
    private static List<double[]> steps(Plan plan) {
        Map<String, double[]> joints = new HashMap<>();
        List<double[]> steps = new ArrayList<>();
        double usual = plan.assembly().sheet().times().spread();
        for (Step step : plan.steps()) {
            double minutes = step.minutes().decimal().doubleValue();
            Joint joint = step.joint();
            boolean opens = step.act() == Act.UNDO || step.act() == Act.BREAK_LOOSE;
            boolean closes = step.act() == Act.START || step.act() == Act.RUN_DOWN || step.act() == Act.TIGHTEN;
            if (joint != null && (opens || closes)) {
                joints.computeIfAbsent(joint.id() + opens, id ->
                        new double[] {0, joint.entry().spread()})[0] += minutes;
            } else {
                steps.add(new double[] {minutes, usual});
            }
            steps.add(new double[] {step.setup().decimal().doubleValue(), usual});
        }
        steps.addAll(joints.values());
        return steps;
    }

    /** One fastener that may be seized. */
    private record Dice(double chance, double[] minutes, double[] works, double spread) {
        static Dice of(double chance, Row row, double spread) {
            int size = row.tries().size();
            double[] minutes = new double[size];
            double[] works = new double[size];
            for (int i = 0; i < size; i++) {
                minutes[i] = row.tries().get(i).attempt().minutes().decimal().doubleValue();
                works[i] = row.tries().get(i).attempt().chance().doubleValue();
            }
            return new Dice(chance, minutes, works, spread);
        }

        double thrown(Random random) {
            if (random.nextDouble() >= chance) {
                return 0;
            }
            double sum = 0;
            for (int i = 0; i < minutes.length; i++) {
                sum += minutes[i];
                if (random.nextDouble() < works[i]) {
                    break;
                }
            }
            return sum * Math.exp(spread * random.nextGaussian());
        }
    }
}
