package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import putback.labour.price.Beliefs;
import putback.labour.price.Crew;
import putback.labour.price.Estimate;
import putback.labour.price.Estimating;
import putback.labour.price.Job;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrade;
import putback.labour.seized.RustGrades;
import putback.labour.time.DrawnTimes;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.Wanted;
import putback.plan.selection.WantedNames;
import putback.quantity.Parsed;
import putback.sheet.Assembly;
import putback.sheet.Side;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

class CrewTest {
    private static final BigDecimal RATE = new BigDecimal("60");

    private static Plan plan(String sheet, Side... sides) {
        Assembly assembly = ((Read.Sheet) SheetReader.stock(sheet)).assembly();
        Wanted wanted = ((WantedNames.Understood.Clear)
                        WantedNames.understand(assembly, List.of("pads"), Set.of(sides)))
                .wanted();
        return ((Planned.Sound) Planner.plan(assembly, wanted)).plan();
    }

    private static DrawnTimes drawn(Plan plan, int hands, long seed) {
        return ((Parsed.Value<DrawnTimes>)
                        Crew.times(plan, Beliefs.of(RustGrades.all(RustGrade.SCALED)), RATE, hands, seed))
                .value();
    }

    private static Estimate estimate(Plan plan) {
        List<Job> jobs = List.of(new Job("pads", plan.wanted()));
        return ((Parsed.Value<Estimate>)
                        Estimating.of(plan, jobs, Beliefs.of(RustGrades.all(RustGrade.SCALED)), Terms.of(RATE), 1))
                .value();
    }

    /** Everything is on one side or waits for all, so a second person only looks on. */
    @Test
    void jobOnOneSide_takesTwoPeopleAsLongAsOne() {
        Plan plan = plan("front-brake", Side.LEFT);
        DrawnTimes two = drawn(plan, 2, 7);
        Estimate one = estimate(plan);
        assertThat(two.mean())
                .isCloseTo(one.time().mean(), within(0.01 * one.time().mean()));
        for (double chance : new double[] {0.5, 0.8, 0.95}) {
            double exact = one.time().quantile(chance);
            assertThat(two.quantile(chance)).as("at " + chance).isCloseTo(exact, within(0.015 * exact));
        }
    }

    @Test
    void jobOnBothSides_isShorterForTwo_butNotBelowHalf() {
        Plan plan = plan("front-brake", Side.LEFT, Side.RIGHT);
        double one = estimate(plan).time().mean();
        assertThat(drawn(plan, 2, 7).mean()).isBetween(one / 2, 0.95 * one);
    }

    @Test
    void sameSeed_sameTimes_anotherSeed_nearlyTheSame() {
        Plan plan = plan("front-brake", Side.LEFT, Side.RIGHT);
        assertThat(drawn(plan, 2, 7).mean()).isEqualTo(drawn(plan, 2, 7).mean());
        assertThat(drawn(plan, 2, 8).mean())
                .isNotEqualTo(drawn(plan, 2, 7).mean())
                .isCloseTo(drawn(plan, 2, 7).mean(), within(0.3));
    }
}
