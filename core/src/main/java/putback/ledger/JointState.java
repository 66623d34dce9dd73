package putback.ledger;

import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/** What state a joint is in, so that a colleague can read it. */
public enum JointState {
    /** Nobody has touched it. */
    UNTOUCHED("untouched"),
    /** Broken loose and still on, or run down and tightened later. */
    LOOSE("loose on purpose"),
    OUT("out"),
    /** On its thread, not tight. */
    STARTED("started"),
    /** Closed, and tight where it has a thread. */
    FINAL("final"),
    /** Final, and looked at a second time. */
    MARKED("marked");

    private final String word;

    JointState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether weight may not go on it yet. */
    public boolean isOpen() {
        return this == LOOSE || this == OUT || this == STARTED;
    }

    /**
     * @param fixing null where the plan does not know the joint
     */
    static JointState of(JointStory story, @Nullable Fixing fixing) {
        boolean threaded = fixing == null || fixing.threaded();
        if (!story.isTouched()) {
            return UNTOUCHED;
        }
        if (story.isOpen()) {
            return OUT;
        }
        if (threaded && story.tightened() == null) {
            boolean later = story.isRunDown() && fixing != null && isTightenedLater(fixing.tight());
            return later || story.isLoosened() ? LOOSE : STARTED;
        }
        if (!story.isStarted()) {
            return LOOSE;
        }
        return story.isLookedAt(threaded) ? MARKED : FINAL;
    }

    private static boolean isTightenedLater(PlanStep.@Nullable Tight tight) {
        return tight != null
                && (tight.height() == Height.RIDE_HEIGHT
                        || tight.height() == Height.ON_WHEELS
                        || !tight.after().isEmpty());
    }
}
