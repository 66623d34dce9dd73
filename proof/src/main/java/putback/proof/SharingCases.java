package putback.proof;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import putback.labour.seized.Attempt;
import putback.labour.seized.Row;
import putback.labour.seized.Seized;
import putback.labour.share.GroupWork;
import putback.labour.share.Shapley;
import putback.labour.share.Shares;
import putback.quantity.Minutes;

/** The order of attempts, and common work split between jobs. */
final class SharingCases {
    private static final String AIRPORT = "Littlechild and Owen 1973, Management Science 20(3) 370-372, airport game";
    private static final String ORDERS = "Computed independently over all orders, not published";
    private static final String[] NAMES = {"A", "B", "C", "D"};

    /** Minutes of a step, and the jobs that need it as bits. */
    private static final int[][] STEPS = {{30, 7}, {20, 3}, {12, 1}, {15, 2}, {25, 4}, {10, 6}};

    /** By group: A 1, B 2, A and B 3, C 4 and so on. */
    private static final int[] ALTERNATIVES = {0, 14, 14, 19, 15, 29, 20, 34};

    private SharingCases() {}

    static void add(List<Case> cases) {
        split(cases, AIRPORT, "costs 8, 11, 13, 18", SharingCases::airport, "2", "3", "4", "9");
        attempts(cases);
        split(cases, ORDERS, "six steps shared by A, B, C", SharingCases::union, "32", "40", "40");
        split(
                cases,
                ORDERS,
                "routes X 10 or Y 9 for B",
                group -> Minutes.of(BigDecimal.valueOf(ALTERNATIVES[(int) group])),
                "12.5",
                "8",
                "13.5");
    }

    private static void attempts(List<Case> cases) {
        String at = "chance and cost a 0.5 10, b 0.2 2, c 0.8 30, d 0.3 9";
        Seized seized = new Seized(
                BigDecimal.valueOf(60),
                List.of(
                        attempt("a", "0.5", "10"),
                        attempt("b", "0.2", "2"),
                        attempt("c", "0.8", "30"),
                        attempt("d", "0.3", "9")),
                null,
                List.of());
        Row row = LabourCases.value(seized.answer());
        cases.add(new LabourFigure(ORDERS, at, "least expected cost", "22.00")
                .agrees(row.expectedCost().doubleValue()));
        List<String> order = new ArrayList<>();
        row.tries().forEach(one -> order.add(one.attempt().id()));
        String best = "badc";
        for (int i = 0; i < best.length(); i++) {
            cases.add(new LabourFigure(
                            ORDERS, at, "place of " + best.charAt(i) + " in the best order", String.valueOf(i + 1))
                    .within(order.indexOf(best.substring(i, i + 1)) + 1, "0", "whole numbers, no rounding"));
        }
    }

    private static Attempt attempt(String id, String chance, String minutes) {
        return Attempt.plain(id, Minutes.of(minutes), new BigDecimal(chance));
    }

    private static void split(List<Case> cases, String source, String at, GroupWork work, String... expected) {
        Shares shares = LabourCases.value(Shapley.of(expected.length, work, 0));
        for (int i = 0; i < expected.length; i++) {
            cases.add(new LabourFigure(source, at, "share of " + NAMES[i], expected[i])
                    .within(shares.minutes().get(i).decimal().doubleValue(), "0", "exact fractions, no rounding"));
        }
    }

    private static Minutes airport(long group) {
        long[] cost = {8, 11, 13, 18};
        return Minutes.of(BigDecimal.valueOf(cost[63 - Long.numberOfLeadingZeros(group)]));
    }

    private static Minutes union(long group) {
        int sum = 0;
        for (int[] step : STEPS) {
            sum += (step[1] & group) == 0 ? 0 : step[0];
        }
        return Minutes.of(BigDecimal.valueOf(sum));
    }
}
