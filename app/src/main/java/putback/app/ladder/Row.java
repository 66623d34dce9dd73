package putback.app.ladder;

import org.jspecify.annotations.Nullable;

/** One height of the picture: what stands on the left rail and what on the right. */
record Row(@Nullable Cell left, @Nullable Cell right) {
    /** Whether the two are the ends of one joint's rung. */
    boolean rung() {
        return left != null
                && right != null
                && left.rungEnd()
                && right.rungEnd()
                && left.jointIndex() == right.jointIndex();
    }
}
