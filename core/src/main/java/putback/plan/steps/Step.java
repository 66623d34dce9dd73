package putback.plan.steps;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;
import putback.sheet.Fastener;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.Station;

/**
 * One action of a plan.
 *
 * @param number from 1
 * @param joint the joint it works on, or null
 * @param part the part it moves, or null
 * @param with what leaves or hangs in one piece with the part
 * @param aid what is put on or taken off, or null
 * @param followUp the follow-up that it is, or null
 * @param fastener the joint's fastener as it is to be at this step (a new part may ask for another), or null
 * @param station where the mechanic stands, or null where it makes no difference
 * @param height how the car stands while it is done; never {@link Height#ANY}
 * @param tool what turns it, such as {@code 19 mm socket}; {@code hand} for bare hands; empty for none
 * @param hold what keeps the other side still; empty for nothing
 * @param minutes of work, without set-up
 * @param setup minutes that getting to this step from the one before costs
 * @param stages passes of a tightening, in order; empty where it has one
 * @param why ids from this step back to the target
 * @param cautions for the hand that does this step
 * @param text the step in one sentence
 */
public record Step(
        int number,
        Phase phase,
        Act act,
        @Nullable Joint joint,
        @Nullable Part part,
        List<Part> with,
        @Nullable String aid,
        @Nullable FollowUp followUp,
        @Nullable Fastener fastener,
        Side side,
        @Nullable Station station,
        Height height,
        String tool,
        String hold,
        Minutes minutes,
        Minutes setup,
        List<String> stages,
        List<String> why,
        List<String> cautions,
        String text) {
    public Step {
        with = List.copyOf(with);
        stages = List.copyOf(stages);
        why = List.copyOf(why);
        cautions = List.copyOf(cautions);
    }

    /** The same step at another place. */
    Step withNumber(int at) {
        return new Step(
                at, phase, act, joint, part, with, aid, followUp, fastener, side, station, height, tool, hold, minutes,
                setup, stages, why, cautions, text);
    }

    /** The same step with its reasons. */
    public Step withWhy(List<String> reasons) {
        return new Step(
                number, phase, act, joint, part, with, aid, followUp, fastener, side, station, height, tool, hold,
                minutes, setup, stages, reasons, cautions, text);
    }
}
