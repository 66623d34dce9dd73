package putback.plan.selection;

import java.util.Arrays;
import java.util.BitSet;
import putback.plan.access.Numbers;

/**
 * If all items of {@code given} are in a plan, one item of {@code oneOf} is too.
 *
 * @param given rising item numbers, often none
 * @param oneOf rising item numbers; none when the given ones cannot all be in a plan
 */
record Clause(int[] given, int[] oneOf) {
    private static final int[] NONE = {};

    static Clause oneOf(BitSet items) {
        return new Clause(NONE, Numbers.in(items));
    }

    static Clause ifThen(BitSet given, BitSet oneOf) {
        return new Clause(Numbers.in(given), Numbers.in(oneOf));
    }

    int length() {
        return given.length + oneOf.length;
    }

    boolean impliedBy(Clause stronger) {
        return isSubset(stronger.oneOf, oneOf) && isSubset(stronger.given, given);
    }

    private static boolean isSubset(int[] small, int[] large) {
        if (small.length == 0) {
            return true;
        }
        if (small.length > large.length || small[0] < large[0] || small[small.length - 1] > large[large.length - 1]) {
            return false;
        }
        for (int value : small) {
            if (Arrays.binarySearch(large, value) < 0) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Clause clause
                && Arrays.equals(given, clause.given)
                && Arrays.equals(oneOf, clause.oneOf);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(given) + Arrays.hashCode(oneOf);
    }

    @Override
    public String toString() {
        return Arrays.toString(given) + " -> " + Arrays.toString(oneOf);
    }
}
