package putback.ledger;

import org.jspecify.annotations.Nullable;

/**
 * One thing that is owed.
 *
 * @param joint null where it is about a part or a follow-up
 * @param part null where it is about a joint or a follow-up
 * @param followUp null where it is about a joint or a part
 * @param detail one clause for a person, after the name of what it is about
 */
public record Debt(
        Kind kind,
        @Nullable String joint,
        @Nullable String part,
        @Nullable String followUp,
        String detail) {
    /** In the order of the harm they do, the worst first. */
    public enum Kind {
        NOT_STARTED("not started"),
        NOT_TIGHTENED("not tightened"),
        BROKEN("broken"),
        PART_OFF("part off"),
        TORQUE_OUTSIDE("torque outside"),
        TORQUE_MISSING("torque missing"),
        WRONG_HEIGHT("wrong height"),
        FASTENER_REUSED("fastener reused"),
        AID_LEFT("aid left"),
        NOT_RENEWED("not renewed"),
        FOLLOW_UP("follow-up"),
        SECOND_LOOK("second look");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    static Debt ofJoint(Kind kind, String joint, String detail) {
        return new Debt(kind, joint, null, null, detail);
    }

    static Debt ofPart(Kind kind, String part, String detail) {
        return new Debt(kind, null, part, null, detail);
    }

    /** Whether a thing that is carried open is what this is about. */
    boolean isAbout(Event carried) {
        return joint != null && joint.equals(carried.joint())
                || part != null && part.equals(carried.part())
                || followUp != null && followUp.equals(carried.followUp());
    }

    /** The joint, the part or the follow-up. */
    public String subject() {
        return joint != null ? joint : part != null ? part : followUp != null ? followUp : "";
    }
}
