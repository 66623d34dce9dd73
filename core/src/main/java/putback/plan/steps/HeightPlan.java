package putback.plan.steps;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import putback.sheet.Height;

/**
 * The fewest changes of height that let everything be done and end on wheels.
 *
 * <p>Breadth first over how the car stands. At each height all that can be done is done, so a state is a height and the
 * set of what is done. Weight comes on only when nothing is left that could have been made ready for it.
 */
final class HeightPlan {
    private static final List<Height> ORDER = List.of(Height.RAISED, Height.RIDE_HEIGHT, Height.ON_WHEELS);
    private static final List<Height> LOADED = List.of(Height.RIDE_HEIGHT, Height.ON_WHEELS);

    private final TaskGraph graph;
    private final boolean strict;
    private final BitSet beforeRideHeight;
    private final BitSet beforeWheels;

    /**
     * @param wheels tasks that put the wheels on, without which the car cannot stand on them
     * @param strict whether weight waits for what can be made ready before it
     */
    HeightPlan(TaskGraph graph, BitSet wheels, boolean strict) {
        this.graph = graph;
        this.strict = strict;
        this.beforeRideHeight = notWaitingFor(LOADED);
        this.beforeWheels = notWaitingFor(List.of(Height.ON_WHEELS));
        beforeWheels.or(wheels);
    }

    private BitSet notWaitingFor(List<Height> heights) {
        BitSet all = new BitSet();
        for (int i = 0; i < graph.size(); i++) {
            Task task = graph.task(i);
            boolean followsRaised = task.kind() == Task.Kind.FOLLOW_UP && task.height() == Height.RAISED;
            boolean matters = task.kind().carriesWeight() || followsRaised;
            all.set(i, matters && !graph.waitsFor(i, heights));
        }
        return all;
    }

    /**
     * @param heights in order, without the one it starts from
     * @param done all tasks, or as many as could be done where there is no way
     */
    record Found(List<Height> heights, BitSet done, boolean complete) {}

    private record State(Height height, BitSet done, List<Height> path) {}

    Found from(Height start) {
        Deque<State> next = new ArrayDeque<>();
        Set<List<Object>> seen = new HashSet<>();
        State first = new State(start, graph.closure(new BitSet(), start), List.of());
        State furthest = first;
        next.add(first);
        while (!next.isEmpty()) {
            State state = next.remove();
            if (state.done.cardinality() == graph.size() && state.height == Height.ON_WHEELS) {
                return new Found(state.path, state.done, true);
            }
            if (state.done.cardinality() > furthest.done.cardinality()) {
                furthest = state;
            }
            for (Height height : ORDER) {
                if (height != state.height && mayStand(height, state.done)) {
                    BitSet done = graph.closure(state.done, height);
                    if (seen.add(List.of(height, done))) {
                        List<Height> path = new ArrayList<>(state.path);
                        path.add(height);
                        next.add(new State(height, done, path));
                    }
                }
            }
        }
        return new Found(furthest.path, furthest.done, false);
    }

    private boolean mayStand(Height height, BitSet done) {
        if (!strict || height == Height.RAISED) {
            return true;
        }
        BitSet missing = (BitSet) (height == Height.RIDE_HEIGHT ? beforeRideHeight : beforeWheels).clone();
        missing.andNot(done);
        return missing.isEmpty();
    }
}
