package putback.plan.access;

import java.util.BitSet;
import java.util.List;

/** The numbers in a set of bits. Loops, because each start pays for a stream and for each lambda in it. */
public final class Numbers {
    private Numbers() {}

    /** Rising; later changes of the bits are not seen. */
    public static int[] in(BitSet bits) {
        int[] numbers = new int[bits.cardinality()];
        int next = 0;
        for (int bit = bits.nextSetBit(0); bit >= 0; bit = bits.nextSetBit(bit + 1)) {
            numbers[next++] = bit;
        }
        return numbers;
    }

    /** Whether one of the numbers, at least, is among the bits. */
    public static boolean anyIn(List<Integer> numbers, BitSet bits) {
        for (int number : numbers) {
            if (bits.get(number)) {
                return true;
            }
        }
        return false;
    }

    /** Whether all of the numbers are among the bits. */
    public static boolean allIn(List<Integer> numbers, BitSet bits) {
        for (int number : numbers) {
            if (!bits.get(number)) {
                return false;
            }
        }
        return true;
    }
}
