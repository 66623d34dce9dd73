package putback.plan;

import java.util.List;
import putback.plan.order.Move;
import putback.plan.selection.Selection;
import putback.plan.selection.Wanted;
import putback.plan.steps.Step;
import putback.quantity.Minutes;
import putback.sheet.Assembly;

/**
 * A round trip through the joints of one car.
 *
 * @param moves the way apart: joints opened and parts moved aside, in order
 * @param setup all set-up minutes, apart and together
 * @param sequenceSetup set-up minutes between joints opened one after the other on the way apart
 * @param proof whether work and sequence set-up together are the least there is
 * @param advice what a good mechanic would mention: companions, the other side of an axle
 * @param warnings what is doubtful about the sheet for this plan
 */
public record Plan(
        Assembly assembly,
        Wanted wanted,
        Selection selection,
        List<Move> moves,
        Minutes setup,
        Minutes sequenceSetup,
        Proof proof,
        List<Step> steps,
        List<ToolUse> tools,
        List<PartNeed> parts,
        List<String> advice,
        List<String> warnings) {
    public Plan {
        moves = List.copyOf(moves);
        steps = List.copyOf(steps);
        tools = List.copyOf(tools);
        parts = List.copyOf(parts);
        advice = List.copyOf(advice);
        warnings = List.copyOf(warnings);
    }

    /** The same with other prices and names of what has to be on the shelf. */
    public Plan withParts(List<PartNeed> needs) {
        return new Plan(
                assembly, wanted, selection, moves, setup, sequenceSetup, proof, steps, tools, needs, advice, warnings);
    }

    /** Minutes that the plan minimises: the work, and the set-up on the way apart. */
    public Minutes objective() {
        return selection.work().plus(sequenceSetup);
    }

    /** Work and all set-ups. */
    public Minutes total() {
        return selection.work().plus(setup);
    }
}
