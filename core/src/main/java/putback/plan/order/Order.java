package putback.plan.order;

import java.util.List;

/**
 * An order of all things.
 *
 * @param things in their order; empty when none was found
 * @param cost of it
 * @param bound no order costs less
 * @param found whether an order was found
 */
public record Order(List<Integer> things, long cost, long bound, boolean found) {
    public Order {
        things = List.copyOf(things);
    }

    /** Whether it is known to cost the least. */
    public boolean proven() {
        return found && bound >= cost;
    }
}
