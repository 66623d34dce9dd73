package putback.benchmarks;

import java.util.Arrays;
import java.util.OptionalLong;
import putback.plan.oracle.SheetGenerator;
import putback.plan.oracle.SheetGenerator.Instance;
import putback.plan.oracle.SolverModel;
import putback.plan.selection.Selected;
import putback.plan.selection.Selector;

/**
 * How far times spread over generated sheets of a size that can be planned: our own method and CP-SAT on the same sheets, each answer
 * compared. One line of a table per size and kind.
 */
public final class SelectionSpread {
    private static final int[] SIZES = {25, 50, 100, 200, 300};
    private static final int REPEATS = 3;

    private SelectionSpread() {}

    /**
     * @param args how many sheets of each size and kind
     */
    public static void main(String[] args) {
        int sheets = args.length == 0 ? 15 : Integer.parseInt(args[0]);
        for (int size : new int[] {50, 100}) {
            row(false, size, sheets, false);
        }
        System.out.println(
                "| sheets | joints | ours, median | worst | CP-SAT, median | worst | ratio, median | least |");
        System.out.println("|---|---|---|---|---|---|---|---|");
        for (boolean corners : new boolean[] {true, false}) {
            for (int size : SIZES) {
                System.out.println(row(corners, size, sheets, true));
            }
        }
    }

    private static String row(boolean corners, int size, int sheets, boolean beside) {
        double[] ours = new double[sheets];
        double[] theirs = new double[sheets];
        double[] ratios = new double[sheets];
        int found = 0;
        for (long seed = 1; found < sheets; seed++) {
            Instance made = corners ? SheetGenerator.makeCorners(seed, size) : SheetGenerator.make(seed, size, true);
            if (Selector.least(made.assembly(), made.wanted()) instanceof Selected.Sound) {
                ours[found] = ours(made);
                theirs[found] = beside ? theirs(made) : 0;
                ratios[found] = theirs[found] / ours[found];
                found++;
            }
        }
        Arrays.sort(ours);
        Arrays.sort(theirs);
        Arrays.sort(ratios);
        int mid = sheets / 2;
        return String.format(
                "| %s | %d | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f |",
                corners ? "corners" : "dense",
                size,
                ours[mid],
                ours[sheets - 1],
                theirs[mid],
                theirs[sheets - 1],
                ratios[mid],
                ratios[0]);
    }

    /** Milliseconds, the least of some calls. */
    private static double ours(Instance made) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < REPEATS; i++) {
            long start = System.nanoTime();
            Selector.least(made.assembly(), made.wanted());
            least = Math.min(least, (System.nanoTime() - start) / 1e6);
        }
        return least;
    }

    private static double theirs(Instance made) {
        long start = System.nanoTime();
        OptionalLong work = new SolverModel(made.assembly(), made.wanted()).leastWork();
        double time = (System.nanoTime() - start) / 1e6;
        Selected selected = Selector.least(made.assembly(), made.wanted());
        boolean same = selected instanceof Selected.Sound sound
                ? work.isPresent()
                        && work.getAsLong() == sound.selection().work().millionths()
                : work.isEmpty();
        if (!same) {
            throw new IllegalStateException(made + ": " + selected + " against " + work);
        }
        return time;
    }
}
