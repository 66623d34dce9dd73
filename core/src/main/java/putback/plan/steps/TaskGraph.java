package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.sheet.Height;

/** Tasks, and which have to be done before which. */
final class TaskGraph {
    private final List<Task> tasks = new ArrayList<>();
    private final List<BitSet> before = new ArrayList<>();

    int add(Task task) {
        tasks.add(task);
        before.add(new BitSet());
        return tasks.size() - 1;
    }

    void order(int first, int then) {
        if (first != then) {
            before.get(then).set(first);
        }
    }

    void forget(int first, int then) {
        before.get(then).clear(first);
    }

    int size() {
        return tasks.size();
    }

    Task task(int index) {
        return tasks.get(index);
    }

    BitSet before(int index) {
        return (BitSet) before.get(index).clone();
    }

    boolean isReady(int index, BitSet done, Height height) {
        Height needed = tasks.get(index).height();
        if (done.get(index) || needed != Height.ANY && needed != height) {
            return false;
        }
        BitSet missing = before(index);
        missing.andNot(done);
        return missing.isEmpty();
    }

    /** All that can be done without changing the height, whatever the order. */
    BitSet closure(BitSet from, Height height) {
        BitSet done = (BitSet) from.clone();
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int i = 0; i < tasks.size(); i++) {
                if (isReady(i, done, height)) {
                    done.set(i);
                    moved = true;
                }
            }
        }
        return done;
    }

    /** Everything that has to be done before the task, and the task. */
    BitSet ancestors(int index) {
        BitSet all = new BitSet();
        collect(index, all);
        return all;
    }

    private void collect(int index, BitSet all) {
        if (!all.get(index)) {
            all.set(index);
            BitSet earlier = before.get(index);
            for (int i = earlier.nextSetBit(0); i >= 0; i = earlier.nextSetBit(i + 1)) {
                collect(i, all);
            }
        }
    }

    /** Whether the task, or something before it, waits for one of the heights. */
    boolean waitsFor(int index, List<Height> heights) {
        BitSet all = ancestors(index);
        for (int i = all.nextSetBit(0); i >= 0; i = all.nextSetBit(i + 1)) {
            if (heights.contains(tasks.get(i).height())) {
                return true;
            }
        }
        return false;
    }
}
