package putback.benchmarks;

import java.util.Map;
import java.util.TreeMap;
import putback.plan.order.Order;
import putback.plan.order.Ordering;
import putback.proof.SopFile;

/**
 * The sequential ordering problems of TSPLIB that come with the proof: our own search and CP-SAT, each answer against the
 * bound of the other. One line of a table per file.
 */
public final class PublishedOrders {
    private static final int REPEATS = 3;
    private static final double SECONDS = 60;

    private PublishedOrders() {}

    /** States to look at, by name: as many as in the proof. */
    private static Map<String, Integer> files() {
        Map<String, Integer> files = new TreeMap<>();
        for (String proven : new String[] {"ESC07", "ESC12", "ESC25", "ESC47", "br17.10"}) {
            files.put(proven, 50_000);
        }
        files.put("p43.1", 1_000);
        files.put("rbg048a", 1_000);
        return files;
    }

    public static void main(String[] args) {
        row("ESC12", 50_000);
        row("ESC25", 50_000);
        System.out.println(
                "| file | nodes | ours, ms | least cost | bound | CP-SAT, ms | least cost | bound | ratio |");
        System.out.println("|---|---|---|---|---|---|---|---|---|");
        files().forEach((name, states) -> System.out.println(row(name, states)));
    }

    private static String row(String name, int states) {
        SopFile file = SopFile.published(name);
        double ours = Double.POSITIVE_INFINITY;
        Order order = Ordering.least(file, states);
        for (int i = 0; i < REPEATS; i++) {
            long start = System.nanoTime();
            order = Ordering.least(file, states);
            ours = Math.min(ours, (System.nanoTime() - start) / 1e6);
        }
        long start = System.nanoTime();
        OrderCircuit.Answer answer = new OrderCircuit(file).least(SECONDS);
        double theirs = (System.nanoTime() - start) / 1e6;
        if (order.bound() > answer.cost() || answer.bound() > order.cost()) {
            throw new IllegalStateException(name + ": " + order + " against " + answer);
        }
        boolean bothProven = order.proven() && answer.bound() >= answer.cost();
        return String.format(
                "| %s | %d | %.2f | %d | %d | %.1f | %d | %d | %s |",
                name,
                file.size() + 1,
                ours,
                order.cost(),
                order.bound(),
                theirs,
                answer.cost(),
                answer.bound(),
                bothProven ? String.format("%.1f", theirs / ours) : "");
    }
}
