package putback.plan.steps;

import java.util.List;
import putback.plan.order.Move;
import putback.quantity.Minutes;

/**
 * All steps of a round trip, in order.
 *
 * @param steps numbered from 1
 * @param moves the way apart as it is done: what is in the way of a fastener that is broken loose on wheels comes forward
 * @param warnings what is doubtful about the sheet for this trip, in the order it was met
 */
public record RoundTrip(List<Step> steps, List<Move> moves, List<String> warnings) {
    public RoundTrip {
        steps = List.copyOf(steps);
        moves = List.copyOf(moves);
        warnings = List.copyOf(warnings);
    }

    /** Minutes of work in all steps: equal to the work of the selection. */
    public Minutes work() {
        return steps.stream().map(Step::minutes).reduce(Minutes.ZERO, Minutes::plus);
    }

    /** Minutes that all changes of station, height, side and tool cost, apart and together. */
    public Minutes setup() {
        return steps.stream().map(Step::setup).reduce(Minutes.ZERO, Minutes::plus);
    }
}
