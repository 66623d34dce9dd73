package putback.labour.share;

import putback.quantity.Parsed;

/**
 * Splits common work fairly: each job bears what it adds to those before it, as a mean over all orders in which the jobs
 * could be thought of. Source: SHAPLEY53; for layers of cost the same as the airport game of LO73.
 */
public final class Shapley {
    /** Up to here all groups are asked for: 4095 of them. */
    public static final int MOST_EXACT = 12;

    /** More than anyone does to one car at a time. */
    public static final int MOST_JOBS = 60;

    private static final int MOST_PAIRS = 1000;

    /** Working out a group may take a millisecond or two. */
    private static final int MOST_GROUPS = 4000;

    private Shapley() {}

    /**
     * Exact up to {@link #MOST_EXACT} jobs; beyond, from orders drawn by the seed, as many as ask for
     * 4000 groups at most.
     *
     * @param jobs how many, 1 to {@link #MOST_JOBS}
     */
    public static Parsed<Shares> of(int jobs, GroupWork work, long seed) {
        if (jobs < 1 || jobs > MOST_JOBS) {
            return new Parsed.Refused<>(jobs + " jobs cannot be shared; it may be 1 to " + MOST_JOBS);
        }
        int pairs = Math.min(MOST_PAIRS, MOST_GROUPS / jobs / 2);
        return new Parsed.Value<>(
                jobs <= MOST_EXACT ? AllGroups.shares(jobs, work) : DrawnOrders.shares(jobs, work, pairs, seed));
    }
}
