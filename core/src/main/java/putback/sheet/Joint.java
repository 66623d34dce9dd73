package putback.sheet;

import java.util.List;

/**
 * A joint of one car, its references resolved to indices.
 *
 * @param index its place in {@link Assembly#joints()}
 * @param id with its side, such as {@code left.strut-to-hub}
 * @param joins indices of two or more parts
 * @param behind clauses of part indices: one of each clause has to be clear
 * @param reachOnWheels the same when it is done on wheels; equal to {@code behind} where the sheet does not say
 * @param after indices of joints that have to be open before
 * @param aheadOf indices of joints that are opened later if both are
 * @param loosenBefore indices of joints that are still shut when this one is broken loose
 * @param spoils indices of parts that opening it ruins
 */
public record Joint(
        int index,
        String id,
        Side side,
        JointEntry entry,
        List<Integer> joins,
        List<List<Integer>> behind,
        List<List<Integer>> reachOnWheels,
        List<Integer> after,
        List<Integer> aheadOf,
        List<Integer> loosenBefore,
        List<Letting> letsGo,
        List<Integer> spoils) {
    public Joint {
        joins = List.copyOf(joins);
        behind = Nested.copyOf(behind);
        reachOnWheels = Nested.copyOf(reachOnWheels);
        after = List.copyOf(after);
        aheadOf = List.copyOf(aheadOf);
        loosenBefore = List.copyOf(loosenBefore);
        letsGo = List.copyOf(letsGo);
        spoils = List.copyOf(spoils);
    }

    public String name() {
        return Naming.sided(side, entry.name());
    }

    public Fastener fastener() {
        return entry.fastener();
    }

    /** Whether its own {@code reach-on-wheels} was written in the sheet. */
    public boolean saysReachOnWheels() {
        return entry.reachOnWheels() != null;
    }
}
