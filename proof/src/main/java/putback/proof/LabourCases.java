package putback.proof;

import java.util.ArrayList;
import java.util.List;
import putback.labour.learnt.ChanceLearnt;
import putback.labour.learnt.ShelfRule;
import putback.labour.learnt.TimeLearnt;
import putback.labour.time.JobTime;
import putback.labour.time.Lognormal;
import putback.labour.time.Normal;
import putback.labour.time.Seizure;
import putback.labour.time.StepTime;
import putback.quantity.Parsed;

/** Times, chances and shelves. */
final class LabourCases {
    private static final String HANDBOOK = "MIL-HDBK-338B, section 5.6.2.1, lognormal repair times";
    private static final String REFIT =
            "Computed independently from 46 repair times (Chhikara and Folks 1977, from memory), not published";
    private static final String SERVICE =
            "Abbatiello 1995, service database, as printed in El-Haik and Yang, Design for Six Sigma, table 10.5";
    private static final String DRAWN = "Computed independently by simulation, not published";
    private static final String POSTERIOR = "Worked example of a beta prior, title not recorded";
    private static final String CONJUGATE = "Computed independently from the conjugate formulas, not published";
    private static final String NEWSVENDOR = "Textbook data of the newsvendor, titles not recorded; answers computed";
    private static final String WRONG_ANSWER =
            "An answer found on the web to a newsvendor exercise, title not recorded";

    private LabourCases() {}

    static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        lognormal(cases);
        sums(cases);
        chances(cases);
        times(cases);
        shelf(cases);
        SharingCases.add(cases);
        return cases;
    }

    private static void lognormal(List<Case> cases) {
        String[] chances = {"0.80", "0.85", "0.90", "0.95", "0.99"};
        String[] z = {"0.8416", "1.036", "1.282", "1.645", "2.326"};
        for (int i = 0; i < z.length; i++) {
            cases.add(new LabourFigure(HANDBOOK, "standard normal, chance " + chances[i], "z", z[i])
                    .agrees(Normal.quantile(Double.parseDouble(chances[i]))));
        }
        Lognormal fit = new Lognormal(Math.exp(0.65839), 1.11397);
        String at = "m 0.65839, s 1.11397";
        cases.add(new LabourFigure(REFIT, at, "mean, h", "3.593").agrees(fit.mean()));
        cases.add(new LabourFigure(REFIT, at, "median, h", "1.932").agrees(fit.medianMinutes()));
        cases.add(new LabourFigure(REFIT, at, "mode, h", "0.558").agrees(fit.mode()));
        cases.add(new LabourFigure(REFIT, at, "90th percentile, h", "8.053").agrees(fit.quantile(0.9)));
        cases.add(new LabourFigure(REFIT, at, "95th percentile, h", "12.072")
                .within(
                        fit.quantile(0.95),
                        "0.0067",
                        "worked out with z = 1.645: half its last digit, times s and the figure"));
        JobTime job = job(List.of(new StepTime("repair", fit, Seizure.NONE)));
        cases.add(new LabourFigure(REFIT, at + ", added up on the grid", "95th percentile, h", "12.072")
                .within(job.quantile(0.95), "0.0121", "0.1 %, what the grid is held to"));
    }

    private static void sums(List<Case> cases) {
        List<StepTime> rows = new ArrayList<>();
        for (double seconds : new double[] {42.3, 4.5, 12.2, 3.8, 3.8, 4.5, 6.4, 23.0, 3.8}) {
            rows.add(StepTime.of("row " + rows.size(), seconds, 0));
        }
        cases.add(new LabourFigure(SERVICE, "nine rows of the pressure recorder", "disassembly, s", "104.3")
                .agrees(job(rows).quantile(0.5)));
        JobTime three = job(List.of(part(10, 0.3), part(20, 0.5), part(5, 1.0)));
        String at = "mean and variation 10 0.3, 20 0.5, 5 1.0";
        String[] chances = {"0.50", "0.80", "0.90", "0.95"};
        String[] drawn = {"32.96", "43.03", "49.85", "56.56"};
        for (int i = 0; i < drawn.length; i++) {
            cases.add(new LabourFigure(DRAWN, at, "sum not exceeded with a chance of " + chances[i], drawn[i])
                    .within(
                            three.quantile(Double.parseDouble(chances[i])),
                            String.valueOf(Math.round(Double.parseDouble(drawn[i]) * 5) / 1000.0),
                            "0.5 %: the simulation's own scatter, its number of draws is not stated"));
        }
        cases.add(new LabourFigure(DRAWN, at, "mean of the sum, by adding the means", "35").agrees(three.mean()));
        cases.add(new LabourFigure(DRAWN, at, "variance of the sum, by adding the variances", "134")
                .agrees(three.standardDeviation() * three.standardDeviation()));
    }

    private static StepTime part(double mean, double variation) {
        double square = 1 + variation * variation;
        return StepTime.of("part " + mean, mean / Math.sqrt(square), Math.sqrt(Math.log(square)));
    }

    private static void chances(List<Case> cases) {
        ChanceLearnt one = value(value(ChanceLearnt.of(2, 2)).after(13, 20));
        String at = "beta(2, 2), 13 of 20";
        cases.add(new LabourFigure(POSTERIOR, at, "mean", "0.625").agrees(one.mean()));
        cases.add(new LabourFigure(CONJUGATE, at, "5th percentile", "0.4595").agrees(one.quantile(0.05)));
        cases.add(new LabourFigure(CONJUGATE, at, "95th percentile", "0.7784").agrees(one.quantile(0.95)));
        cases.add(new LabourFigure(CONJUGATE, at, "variance", "0.009375").agrees(one.variance()));
        ChanceLearnt bolts = value(value(ChanceLearnt.of(1, 9)).after(4, 25));
        String seized = "beta(1, 9), 4 seized of 25";
        cases.add(new LabourFigure(CONJUGATE, seized, "mean", "0.1429").agrees(bolts.mean()));
        cases.add(new LabourFigure(CONJUGATE, seized, "none of the next 8", "0.3271").agrees(bolts.noneOf(8)));
        cases.add(new LabourFigure(CONJUGATE, seized, "expected of the next 8", "1.143").agrees(bolts.expectedOf(8)));
    }

    private static void times(List<Case> cases) {
        TimeLearnt learnt = value(value(TimeLearnt.of(40, 2, 2, 0.1)).after(List.of(42.0, 55.0, 38.0, 61.0)));
        String at = "median 40 of weight 2, shape 2, scale 0.1; jobs of 42, 55, 38, 61 min";
        cases.add(new LabourFigure(CONJUGATE, at, "mean of the logarithm", "3.81187").agrees(learnt.meanLog()));
        cases.add(new LabourFigure(CONJUGATE, at, "weight", "6").agrees(learnt.weight()));
        cases.add(new LabourFigure(CONJUGATE, at, "shape", "4").agrees(learnt.shape()));
        cases.add(new LabourFigure(CONJUGATE, at, "scale", "0.196872").agrees(learnt.scale()));
        cases.add(new LabourFigure(CONJUGATE, at, "next job, 10th percentile, min", "32.37")
                .agrees(learnt.quantile(0.1)));
        cases.add(new LabourFigure(CONJUGATE, at, "next job, median, min", "45.23").agrees(learnt.quantile(0.5)));
        cases.add(new LabourFigure(CONJUGATE, at, "next job, 90th percentile, min", "63.22")
                .agrees(learnt.quantile(0.9)));
    }

    private static void shelf(List<Case> cases) {
        ShelfRule first = value(ShelfRule.of(40, 10));
        cases.add(new LabourFigure(NEWSVENDOR, "normal 1000, 200; costs 40 and 10", "critical ratio", "0.8")
                .agrees(first.criticalRatio()));
        cases.add(new LabourFigure(NEWSVENDOR, "normal 1000, 200; costs 40 and 10", "amount", "1168.32")
                .agrees(first.amount(chance -> 1000 + 200 * Normal.quantile(chance))));
        ShelfRule second = value(ShelfRule.of(6, 9));
        String at = "price 20, cost 14, salvage 5; ";
        cases.add(new LabourFigure(NEWSVENDOR, at + "uniform 80 to 150", "amount", "108")
                .agrees(second.amount(chance -> 80 + 70 * chance)));
        cases.add(new LabourFigure(NEWSVENDOR, at + "normal 115, 15", "amount", "111.2")
                .agrees(second.amount(chance -> 115 + 15 * Normal.quantile(chance))));
        ShelfRule third = value(ShelfRule.of(60, 110));
        String wrong = "normal 80, 30; costs 60 and 110";
        cases.add(new LabourFigure(NEWSVENDOR, wrong, "amount", "68.68")
                .agrees(third.amount(chance -> 80 + 30 * Normal.quantile(chance))));
        cases.add(new LabourFigure(WRONG_ANSWER, wrong, "amount as printed", "92.6")
                .known(
                        third.amount(chance -> 80 + 30 * Normal.quantile(chance)),
                        "misprint: z of a chance below one half is taken with the wrong sign"));
    }

    private static JobTime job(List<StepTime> steps) {
        return value(JobTime.of(steps, 0));
    }

    static <T> T value(Parsed<T> parsed) {
        if (parsed instanceof Parsed.Value<T> value) {
            return value.value();
        }
        throw new IllegalStateException(parsed.refusal());
    }
}
