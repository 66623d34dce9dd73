package putback.labour.share;

import java.util.List;
import putback.quantity.Minutes;

/**
 * What each job bears of the work of all together; the sum is exact.
 *
 * @param minutes of each job, in order; a share may be above what the job takes alone, where two free a part that
 *     neither frees
 * @param alone what each job takes without the others
 * @param exact whether these are the Shapley values themselves, to a millionth of a minute
 * @param error 95 % of such samples are nearer than this to the Shapley values, share by share; zero when exact
 */
public record Shares(List<Minutes> minutes, List<Minutes> alone, boolean exact, List<Minutes> error) {
    public Shares {
        minutes = List.copyOf(minutes);
        alone = List.copyOf(alone);
        error = List.copyOf(error);
    }

    public Minutes total() {
        Minutes sum = Minutes.ZERO;
        for (Minutes one : minutes) {
            sum = sum.plus(one);
        }
        return sum;
    }
}
