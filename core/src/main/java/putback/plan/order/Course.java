package putback.plan.order;

import java.util.List;
import putback.plan.selection.Selection;
import putback.quantity.Minutes;

/**
 * A selection with the order of its way apart.
 *
 * @param setup set-up minutes between joints opened one after the other
 * @param proven whether no other selection and order have less work and set-up together
 * @param bound none has less
 */
public record Course(Selection selection, List<Move> moves, Minutes setup, boolean proven, Minutes bound) {
    public Course {
        moves = List.copyOf(moves);
    }
}
