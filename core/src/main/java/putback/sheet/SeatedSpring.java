package putback.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * A spring that load alone holds in its seats, and what it presses apart.
 *
 * @param spring index of the part
 * @param seats indices of the joints that its load goes through: its own seats, and those of pads and cups that nothing
 *     but seats holds
 * @param ends indices of the parts in which the load ends, such as body and beam
 */
public record SeatedSpring(int spring, List<Integer> seats, List<Integer> ends) {
    public SeatedSpring {
        seats = List.copyOf(seats);
        ends = List.copyOf(ends);
    }

    /** All of an assembly, in its order; none where a spring is held otherwise than by seats. */
    public static List<SeatedSpring> of(Assembly assembly) {
        List<SeatedSpring> springs = new ArrayList<>();
        for (Part part : assembly.parts()) {
            if (part.entry().storedEnergy() == StoredEnergy.SPRING) {
                SeatedSpring spring = of(assembly, part.index());
                if (!spring.seats.isEmpty()) {
                    springs.add(spring);
                }
            }
        }
        return springs;
    }

    private static SeatedSpring of(Assembly assembly, int spring) {
        List<Integer> seats = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        List<Integer> reached = new ArrayList<>(List.of(spring));
        for (int i = 0; i < reached.size(); i++) {
            int part = reached.get(i);
            if (part != spring && !isPad(assembly, part)) {
                ends.add(part);
                continue;
            }
            for (Joint joint : assembly.joints()) {
                if (isSeat(joint) && joint.joins().contains(part) && !seats.contains(joint.index())) {
                    seats.add(joint.index());
                    addNew(joint.joins(), reached);
                }
            }
        }
        return new SeatedSpring(spring, seats, ends);
    }

    private static void addNew(List<Integer> parts, List<Integer> reached) {
        for (int part : parts) {
            if (!reached.contains(part)) {
                reached.add(part);
            }
        }
    }

    /** Held by seats only: a pad, a cup. */
    private static boolean isPad(Assembly assembly, int part) {
        boolean pad = !assembly.parts().get(part).isBody();
        for (Joint joint : assembly.joints()) {
            pad &= isSeat(joint) || !joint.joins().contains(part);
        }
        return pad;
    }

    private static boolean isSeat(Joint joint) {
        return joint.entry().kind() == JointKind.SEAT;
    }

    /** Whether its load has an end that the joint lets down on a jack, as the sheet writes it. */
    boolean isLetDownBy(Joint joint) {
        for (Letting letting : joint.letsGo()) {
            if (letting.letDown() && ends.contains(letting.part())) {
                return true;
            }
        }
        return false;
    }

    /** Whether the joint lets go of the spring itself, held by what the sheet names. */
    boolean isHeldFor(Joint joint) {
        for (Letting letting : joint.letsGo()) {
            if (letting.part() == spring) {
                return true;
            }
        }
        return false;
    }

    /** All joints that have to be open before one of its seats is. */
    BitSet before(Assembly assembly) {
        BitSet before = new BitSet();
        List<Integer> next = new ArrayList<>(seats);
        for (int i = 0; i < next.size(); i++) {
            for (int joint : assembly.joints().get(next.get(i)).after()) {
                if (!before.get(joint)) {
                    before.set(joint);
                    next.add(joint);
                }
            }
        }
        return before;
    }
}
