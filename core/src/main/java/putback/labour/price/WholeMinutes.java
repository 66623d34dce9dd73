package putback.labour.price;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import putback.quantity.Minutes;

/** Splits whole minutes in proportion to shares, exactly: what rounding down leaves goes to the largest remainders. */
final class WholeMinutes {
    private WholeMinutes() {}

    /**
     * @param shares none below 0; where all are 0 each gets alike
     */
    static List<Long> split(long minutes, List<Minutes> shares) {
        long all = 0;
        for (Minutes one : shares) {
            all = Math.addExact(all, one.millionths());
        }
        List<Long> split = new ArrayList<>();
        List<BigInteger> remainders = new ArrayList<>();
        List<Integer> byRemainder = new ArrayList<>();
        BigInteger divisor = BigInteger.valueOf(all == 0 ? shares.size() : all);
        long left = minutes;
        for (int i = 0; i < shares.size(); i++) {
            long weight = all == 0 ? 1 : shares.get(i).millionths();
            BigInteger[] parts = BigInteger.valueOf(minutes)
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
