package putback.plan.steps;

import org.jspecify.annotations.Nullable;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Joint;

/**
 * One thing to do on the way back.
 *
 * @param height how the car has to stand; {@link Height#ANY} as it stands
 * @param joint of a closing task
 * @param part of an aside that comes back, its index; -1 otherwise
 * @param followUp of a follow-up
 */
record Task(
        Kind kind,
        Height height,
        @Nullable Joint joint,
        int part,
        @Nullable FollowUp followUp) {
    /** In the order in which they come where nothing else decides. */
    enum Kind {
        ASIDE_BACK,
        START,
        RUN_DOWN,
        TIGHTEN,
        SECOND_LOOK,
        FOLLOW_UP;

        /** Work on the fixings first, then the second looks, then the follow-ups. */
        int rank() {
            return this == SECOND_LOOK ? 1 : this == FOLLOW_UP ? 2 : 0;
        }

        /** Whether it has to be done before the weight comes on, if it can be. */
        boolean carriesWeight() {
            return this == START || this == RUN_DOWN || this == TIGHTEN;
        }
    }

    static Task of(Kind kind, Joint joint, Height height) {
        return new Task(kind, height, joint, -1, null);
    }

    static Task asideBack(int part) {
        return new Task(Kind.ASIDE_BACK, Height.ANY, null, part, null);
    }

    static Task followUp(FollowUp work, Height height) {
        return new Task(Kind.FOLLOW_UP, height, null, -1, work);
    }
}
