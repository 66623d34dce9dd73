package putback.plan.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Puts things in order at the least cost: best-first search over what is done and in which state, with the problem's
 * bound.
 *
 * <p>A thing that costs nothing now and leaves the state as it is goes first at once: no order is better for putting it
 * off, since what is ready only grows. The search is counted in states, not in seconds, so that the same problem always
 * gets the same answer.
 */
public final class Ordering {
    private final OrderProblem problem;
    private final int budget;
    private final StateTable table = new StateTable();
    private final Frontier frontier = new Frontier();
    private final long all;
    private int looked;

    Ordering(OrderProblem problem, int budget) {
        this.problem = problem;
        this.budget = budget;
        this.all = problem.size() == 0 ? 0 : -1L >>> 64 - problem.size();
    }

    /**
     * The order of least cost.
     *
     * @param budget states to look at; beyond it the best order found by going straight on is given, with the bound
     */
    public static Order least(OrderProblem problem, int budget) {
        if (problem.size() > 63) {
            throw new IllegalArgumentException("at most 63 things can be ordered, not " + problem.size());
        }
        return new Ordering(problem, budget).search();
    }

    /** States looked at so far. */
    int looked() {
        return looked;
    }

    Order search() {
        add(0, problem.start(), 0, -1, -1);
        long bound = 0;
        while (!frontier.isEmpty()) {
            bound = Math.max(bound, frontier.lowest());
            int entry = frontier.take();
            if (table.done(entry) == all) {
                return new Order(path(entry), table.cost(entry), table.cost(entry), true);
            }
            if (++looked > budget) {
                return straightOn(entry, bound);
            }
            expand(entry);
        }
        return new Order(List.of(), Long.MAX_VALUE, Long.MAX_VALUE, false);
    }

    private void expand(int entry) {
        long done = table.done(entry);
        int state = table.state(entry);
        long cost = table.cost(entry);
        long ready = problem.ready(done);
        int free = freeThing(ready, state);
        if (free >= 0) {
            add(done | 1L << free, state, cost, entry, free);
            return;
        }
        for (long rest = ready; rest != 0; rest &= rest - 1) {
            int thing = Long.numberOfTrailingZeros(rest);
            add(done | 1L << thing, problem.after(state, thing), cost + problem.cost(state, thing), entry, thing);
        }
    }

    private int freeThing(long ready, int state) {
        for (long rest = ready; rest != 0; rest &= rest - 1) {
            int thing = Long.numberOfTrailingZeros(rest);
            if (problem.cost(state, thing) == 0 && problem.after(state, thing) == state) {
                return thing;
            }
        }
        return -1;
    }

    private void add(long done, int state, long cost, int from, int thing) {
        int entry = table.improve(done, state, cost, from, thing);
        if (entry >= 0) {
            frontier.add(entry, cost + problem.bound(done, state), Long.bitCount(done));
        }
    }

    private List<Integer> path(int entry) {
        List<Integer> things = new ArrayList<>();
        for (int at = entry; table.parent(at) >= 0; at = table.parent(at)) {
            things.add(table.thing(at));
        }
        Collections.reverse(things);
        return things;
    }

    /** The budget is used up: go on from the most promising states, always to the cheapest next thing. */
    private Order straightOn(int first, long bound) {
        Order best = greedy(0, problem.start(), 0, List.of(), bound);
        int entry = first;
        for (int tries = 0; tries < 64; tries++) {
            Order next = greedy(table.done(entry), table.state(entry), table.cost(entry), path(entry), bound);
            if (next.found() && (!best.found() || next.cost() < best.cost())) {
                best = next;
            }
            if (frontier.isEmpty()) {
                break;
            }
            entry = frontier.take();
        }
        return best;
    }

    private Order greedy(long doneSoFar, int stateSoFar, long costSoFar, List<Integer> soFar, long bound) {
        long done = doneSoFar;
        int state = stateSoFar;
        long cost = costSoFar;
        List<Integer> things = new ArrayList<>(soFar);
        while (done != all) {
            int best = cheapestNext(done, state);
            if (best < 0) {
                return new Order(List.of(), Long.MAX_VALUE, bound, false);
            }
            cost += problem.cost(state, best);
            state = problem.after(state, best);
            done |= 1L << best;
            things.add(best);
        }
        return new Order(things, cost, Math.min(bound, cost), true);
    }

    private int cheapestNext(long done, int state) {
        int best = -1;
        long least = Long.MAX_VALUE;
        for (long rest = problem.ready(done); rest != 0; rest &= rest - 1) {
            int thing = Long.numberOfTrailingZeros(rest);
            int next = problem.after(state, thing);
            long worth = problem.cost(state, thing) + problem.bound(done | 1L << thing, next);
            if (worth < least) {
                least = worth;
                best = thing;
            }
        }
        return best;
    }
}
