package putback.plan.order;

import java.util.Arrays;

/** Entries still to look at: the lowest bound first, among equals the one that has come farthest, then the latest. */
final class Frontier {
    private long[] bound = new long[1 << 10];
    private long[] rank = new long[1 << 10];
    private int[] entry = new int[1 << 10];
    private int size;

    boolean isEmpty() {
        return size == 0;
    }

    long lowest() {
        return bound[0];
    }

    /**
     * @param far how far it has come; farther ones go first among equals
     */
    void add(int newEntry, long newBound, int far) {
        if (size == entry.length) {
            bound = Arrays.copyOf(bound, size * 2);
            rank = Arrays.copyOf(rank, size * 2);
            entry = Arrays.copyOf(entry, size * 2);
        }
        long newRank = -((long) far << 32) - newEntry;
        int at = size++;
        while (at > 0 && before(newBound, newRank, (at - 1) / 2)) {
            move((at - 1) / 2, at);
            at = (at - 1) / 2;
        }
        bound[at] = newBound;
        rank[at] = newRank;
        entry[at] = newEntry;
    }

    private boolean before(long aBound, long aRank, int other) {
        return aBound < bound[other] || aBound == bound[other] && aRank < rank[other];
    }

    private void move(int from, int to) {
        bound[to] = bound[from];
        rank[to] = rank[from];
        entry[to] = entry[from];
    }

    int take() {
        int first = entry[0];
        size--;
        long lastBound = bound[size];
        long lastRank = rank[size];
        int lastEntry = entry[size];
        int at = 0;
        while (2 * at + 1 < size) {
            int child = 2 * at + 1;
            if (child + 1 < size && before(bound[child + 1], rank[child + 1], child)) {
                child++;
            }
            if (!before(bound[child], rank[child], lastBound, lastRank)) {
                break;
            }
            move(child, at);
            at = child;
        }
        bound[at] = lastBound;
        rank[at] = lastRank;
        entry[at] = lastEntry;
        return first;
    }

    private static boolean before(long aBound, long aRank, long bBound, long bRank) {
        return aBound < bBound || aBound == bBound && aRank < bRank;
    }
}
