package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * What each of several jobs costs when they are done together; the sum is the total exactly.
 *
 * @param each in the order of the jobs, tax included
 * @param alone what each would cost by itself, on the same terms
 */
public record Amounts(List<BigDecimal> each, List<BigDecimal> alone) {
    public Amounts {
        each = List.copyOf(each);
        alone = List.copyOf(alone);
    }

    /**
     * Labour as its lines say. A part goes to the jobs that need it by themselves, in proportion to how many of it each
     * needs; what no job needs alone, sundries and subcontracted work go by labour. Tax goes by what it is put on. Each
     * split is in hundredths, what rounding down leaves goes to the largest remainders.
     *
     * @param together labour lines first, one for each job
     * @param needs of each job by itself, for each line of {@code parts}
     * @param alone invoices of the jobs, each by itself
     */
    static Amounts of(Invoice together, List<List<Long>> needs, List<Invoice> alone) {
        int jobs = alone.size();
        List<Long> each = new ArrayList<>();
        List<Long> minutes = new ArrayList<>();
        for (Line line : together.lines().subList(0, jobs)) {
            each.add(hundredths(line.amount()));
            minutes.add(line.quantity().longValueExact());
        }
        int bought = 0;
        for (Line line : together.lines().subList(jobs, together.lines().size())) {
            List<Long> weights = minutes;
            if (line.kind() == Line.Kind.TAX) {
                weights = List.copyOf(each);
            } else if (bought < needs.size()) {
                List<Long> counts = needs.get(bought++);
                weights = counts.stream().allMatch(count -> count == 0) ? minutes : counts;
            }
            add(each, WholeSplit.byWeight(hundredths(line.amount()), weights));
        }
        List<BigDecimal> amounts = new ArrayList<>();
        List<BigDecimal> byThemselves = new ArrayList<>();
        for (int job = 0; job < jobs; job++) {
            amounts.add(BigDecimal.valueOf(each.get(job), 2));
            byThemselves.add(alone.get(job).total());
        }
        return new Amounts(amounts, byThemselves);
    }

    /** Whether a job costs more with the others than by itself. */
    public boolean isAboveAlone(int job) {
        return each.get(job).compareTo(alone.get(job)) > 0;
    }

    private static void add(List<Long> sums, List<Long> more) {
        for (int job = 0; job < sums.size(); job++) {
            sums.set(job, Math.addExact(sums.get(job), more.get(job)));
        }
    }

    private static long hundredths(BigDecimal amount) {
        return amount.movePointRight(2).longValueExact();
    }
}
