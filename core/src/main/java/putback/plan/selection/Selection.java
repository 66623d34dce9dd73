package putback.plan.selection;

import java.util.List;
import putback.quantity.Minutes;
import putback.sheet.FollowUp;

/**
 * Which joints are opened, and what that brings. All lists are in the order of the sheet.
 *
 * @param open indices of the joints that are opened
 * @param off indices of the parts that leave the car
 * @param hung indices of the parts that dangle from their tethers
 * @param aside indices of the parts that are moved aside as the sheet says
 * @param followUps each once
 * @param spoiled indices of the parts that opening a joint ruins and that are renewed although nobody asked
 * @param work minutes to open and close, to handle, to move aside and to follow up
 */
public record Selection(
        List<Integer> open,
        List<Integer> off,
        List<Integer> hung,
        List<Integer> aside,
        List<FollowUp> followUps,
        List<Integer> spoiled,
        Minutes work) {
    public Selection {
        open = List.copyOf(open);
        off = List.copyOf(off);
        hung = List.copyOf(hung);
        aside = List.copyOf(aside);
        followUps = List.copyOf(followUps);
        spoiled = List.copyOf(spoiled);
    }
}
