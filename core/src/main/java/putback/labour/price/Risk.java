package putback.labour.price;

import java.util.ArrayList;
import java.util.List;
import putback.labour.time.Share;

/**
 * Where the scatter of a time comes from, in whole percent that make 100 together.
 *
 * @param id of a joint, or words that start with a capital letter; empty for what the whole car has in common
 * @param percent of the variance
 */
public record Risk(String id, long percent) {
    /** What stands for everything that is not named by itself. */
    public static final String REST = "Everything else";

    private static final double PARTS = 1e12;

    /**
     * The largest ones and a line for the rest; nothing where nothing scatters.
     *
     * @param shares largest first
     * @param most lines before the rest
     * @param least share of a line of its own
     */
    static List<Risk> lines(List<Share> shares, int most, double least) {
        List<String> ids = new ArrayList<>();
        List<Long> weights = new ArrayList<>();
        double rest = 1;
        for (Share one : shares) {
            if (ids.size() < most && one.share() >= least) {
                ids.add(one.id());
                weights.add(Math.round(one.share() * PARTS));
                rest -= one.share();
            }
        }
        if (ids.isEmpty()) {
            return List.of();
        }
        ids.add(REST);
        weights.add(Math.round(Math.max(0, rest) * PARTS));
        List<Long> percents = WholeSplit.byWeight(100, weights);
        List<Risk> lines = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            if (percents.get(i) > 0) {
                lines.add(new Risk(ids.get(i), percents.get(i)));
            }
        }
        return List.copyOf(lines);
    }
}
