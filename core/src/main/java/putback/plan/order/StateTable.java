package putback.plan.order;

import java.util.Arrays;

/** Where the search has been: for each set done and state, the least cost so far and the way there. */
final class StateTable {
    private long[] done = new long[1 << 10];
    private int[] state = new int[1 << 10];
    private long[] cost = new long[1 << 10];
    private int[] parent = new int[1 << 10];
    private int[] via = new int[1 << 10];
    private int[] slots = new int[1 << 12];
    private int size;

    StateTable() {
        Arrays.fill(slots, -1);
    }

    int size() {
        return size;
    }

    long done(int entry) {
        return done[entry];
    }

    int state(int entry) {
        return state[entry];
    }

    long cost(int entry) {
        return cost[entry];
    }

    int parent(int entry) {
        return parent[entry];
    }

    /** The thing that led here. */
    int thing(int entry) {
        return via[entry];
    }

    /** The entry if it is new or was reached at a higher cost before; -1 otherwise. */
    int improve(long doneNow, int stateNow, long costNow, int from, int thing) {
        int slot = slot(doneNow, stateNow);
        int entry = slots[slot];
        if (entry < 0) {
            grow();
            slot = slot(doneNow, stateNow);
            entry = size++;
            slots[slot] = entry;
            done[entry] = doneNow;
            state[entry] = stateNow;
        } else if (cost[entry] <= costNow) {
            return -1;
        }
        cost[entry] = costNow;
        parent[entry] = from;
        via[entry] = thing;
        return entry;
    }

    private int slot(long doneNow, int stateNow) {
        int mask = slots.length - 1;
        long mixed = (doneNow ^ (long) stateNow * 0x9E3779B97F4A7C15L) * 0xBF58476D1CE4E5B9L;
        int slot = (int) (mixed ^ mixed >>> 32) & mask;
        while (slots[slot] >= 0 && (done[slots[slot]] != doneNow || state[slots[slot]] != stateNow)) {
            slot = slot + 1 & mask;
        }
        return slot;
    }

    private void grow() {
        if (size == done.length) {
            int larger = size * 2;
            done = Arrays.copyOf(done, larger);
            state = Arrays.copyOf(state, larger);
            cost = Arrays.copyOf(cost, larger);
            parent = Arrays.copyOf(parent, larger);
            via = Arrays.copyOf(via, larger);
        }
        if (size * 2 >= slots.length) {
            slots = new int[slots.length * 2];
            Arrays.fill(slots, -1);
            for (int entry = 0; entry < size; entry++) {
                slots[slot(done[entry], state[entry])] = entry;
            }
        }
    }
}
