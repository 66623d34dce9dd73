package putback.plan.order;

/** One move on the way apart. */
public sealed interface Move {
    /**
     * A joint is opened.
     *
     * @param joint its index
     */
    record Open(int joint) implements Move {}

    /**
     * A part is moved aside as its sheet says, all the joints that this needs being open.
     *
     * @param part its index
     */
    record MoveAside(int part) implements Move {}
}
