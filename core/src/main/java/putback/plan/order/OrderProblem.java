package putback.plan.order;

/**
 * Up to 63 things to put in order at the least cost, some of them only after others.
 *
 * <p>A set of things is a mask with one bit each. What is ready stays ready as more is done. The cost of the next thing
 * depends on the state that the things before have left, which is a number of the problem's own. Costs and bounds are
 * whole numbers, not negative.
 */
public interface OrderProblem {
    /** How many things, at most 63. */
    int size();

    /** The state before the first. */
    int start();

    /** The things that are not done and could be next. */
    long ready(long done);

    /** What doing the thing next costs in this state. */
    long cost(int state, int thing);

    /** The state after it. */
    int after(int state, int thing);

    /** No order of the rest costs less than this. */
    long bound(long done, int state);
}
