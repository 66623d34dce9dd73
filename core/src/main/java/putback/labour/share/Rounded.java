package putback.labour.share;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import putback.quantity.Minutes;

/** Rounds shares to millionths of a minute so that their sum stays exact: what is left goes to the largest remainders. */
final class Rounded {
    private Rounded() {}

    /**
     * @param values times the divisor; their sum is the total times the divisor
     */
    static List<Minutes> toTotal(BigInteger[] values, BigInteger divisor, long total) {
        long[] whole = new long[values.length];
        List<Integer> byRemainder = new ArrayList<>();
        BigInteger[] remainder = new BigInteger[values.length];
        long left = total;
        for (int i = 0; i < values.length; i++) {
            remainder[i] = values[i].mod(divisor);
            whole[i] = values[i].subtract(remainder[i]).divide(divisor).longValueExact();
            left -= whole[i];
            byRemainder.add(i);
        }
        byRemainder.sort((a, b) -> remainder[b].compareTo(remainder[a]));
        for (int i = 0; i < left; i++) {
            whole[byRemainder.get(i)]++;
        }
        List<Minutes> minutes = new ArrayList<>();
        for (long one : whole) {
            minutes.add(new Minutes(one));
        }
        return minutes;
    }
}
