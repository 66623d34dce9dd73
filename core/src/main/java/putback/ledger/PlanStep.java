package putback.ledger;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/**
 * One step of a plan, as far as the ledger asks for it.
 *
 * @param number in the plan
 * @param with what moves in one piece with the part
 * @param height how the car stands while it is done; {@link Height#ANY} where the plan does not say
 * @param text the step in one sentence; empty where the plan does not say
 * @param tight how tight, for a step that tightens
 * @param newFastener whether a new one is fitted
 * @param count how many fasteners the joint has, at least 1
 * @param brings follow-ups that opening this joint brings
 * @param errand for a follow-up: how it is done
 */
public record PlanStep(
        int number,
        Did did,
        @Nullable String joint,
        @Nullable String part,
        List<String> with,
        @Nullable String aid,
        @Nullable String followUp,
        Height height,
        String text,
        @Nullable Tight tight,
        boolean newFastener,
        int count,
        List<String> brings,
        @Nullable Errand errand) {
    public PlanStep {
        with = List.copyOf(with);
        brings = List.copyOf(brings);
    }

    /**
     * How tight a joint goes.
     *
     * @param torqueNm null where the torque is not known, or it is snug
     * @param angleDeg null where no angle follows
     * @param leastNm least reading allowed; null where there is no torque
     * @param mostNm greatest reading allowed; null where there is no torque
     * @param height at which it has to be tightened; {@link Height#ANY} where it makes no difference
     * @param after follow-ups of this trip before which it is run down only
     * @param passes how often the wrench goes round, at least 1
     */
    public record Tight(
            @Nullable Double torqueNm,
            @Nullable Double angleDeg,
            @Nullable Double leastNm,
            @Nullable Double mostNm,
            Height height,
            List<String> after,
            int passes) {
        public Tight {
            after = List.copyOf(after);
        }
    }

    /**
     * How a follow-up is done.
     *
     * @param broughtBy joints that bring it; empty where the plan does not say, and then any of them does
     * @param height at which it is done; {@link Height#ANY} where it makes no difference
     * @param follows follow-ups that come before it, where they are due too
     */
    public record Errand(List<String> broughtBy, Height height, List<String> follows) {
        /** Of which nothing is known but that it is due once anything is opened. */
        public static final Errand PLAIN = new Errand(List.of(), Height.ANY, List.of());

        public Errand {
            broughtBy = List.copyOf(broughtBy);
            follows = List.copyOf(follows);
        }
    }
}
