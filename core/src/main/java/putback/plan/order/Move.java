package putback.plan.order;

import org.jspecify.annotations.Nullable;

/** One move on the way apart. Its methods are written out: Java puts those of a record together anew at each start. */
public sealed interface Move {
    /**
     * A joint is opened.
     *
     * @param joint its index
     */
    record Open(int joint) implements Move {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Open same && joint == same.joint;
        }

        @Override
        public int hashCode() {
            return joint;
        }
    }

    /**
     * A part is moved aside as its sheet says, all the joints that this needs being open.
     *
     * @param part its index
     */
    record MoveAside(int part) implements Move {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof MoveAside same && part == same.part;
        }

        @Override
        public int hashCode() {
            return ~part;
        }
    }
}
