package putback.labour.price;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import putback.quantity.Minutes;

/**
 * Splits whole things (minutes, hundredths of money, percent) in proportion to weights, exactly: what rounding down
 * leaves goes to the largest remainders.
 */
final class WholeSplit {
    private WholeSplit() {}

    /** Splits by lengths of time; see {@link #byWeight}. */
    static List<Long> byMinutes(long whole, List<Minutes> shares) {
        List<Long> weights = new ArrayList<>();
        for (Minutes one : shares) {
            weights.add(one.millionths());
        }
        return byWeight(whole, weights);
    }

    /**
     * @param whole 0 or more
     * @param weights none below 0; where all are 0 each gets alike
     */
    static List<Long> byWeight(long whole, List<Long> weights) {
        BigInteger all = BigInteger.ZERO;
        for (long one : weights) {
            all = all.add(BigInteger.valueOf(one));
        }
        boolean alike = all.signum() == 0;
        BigInteger divisor = alike ? BigInteger.valueOf(weights.size()) : all;
        List<Long> split = new ArrayList<>();
        List<BigInteger> remainders = new ArrayList<>();
        List<Integer> byRemainder = new ArrayList<>();
        long left = whole;
        for (int i = 0; i < weights.size(); i++) {
            long weight = alike ? 1 : weights.get(i);
            BigInteger[] parts = BigInteger.valueOf(whole)
                    .multiply(BigInteger.valueOf(weight))
                    .divideAndRemainder(divisor);
            split.add(parts[0].longValueExact());
            remainders.add(parts[1]);
            byRemainder.add(i);
            left -= parts[0].longValueExact();
        }
        byRemainder.sort(Comparator.comparing((Integer i) -> remainders.get(i)).reversed());
        for (int i = 0; i < left; i++) {
            int at = byRemainder.get(i);
            split.set(at, split.get(at) + 1);
        }
        return List.copyOf(split);
    }
}
