package putback.ledger.onward;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import putback.plan.Plan;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Numbers;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.sheet.Joint;
import putback.sheet.Part;

/**
 * Which earlier steps a step of a plan cannot do without. Between two changes of height any order that keeps to this is
 * sound: a joint without which another cannot be reached comes before it apart, and after it together, since what covers a
 * fixing goes back once that is tight.
 */
public final class Needs {
    private final Plan plan;
    private final Network network;
    private final BitSet planned = new BitSet();
    private final BitSet asides = new BitSet();
    /** By the index of a joint, those that have to be open before it. */
    private final Map<Integer, BitSet> before = new HashMap<>();

    private Needs(Plan plan) {
        this.plan = plan;
        this.network = Network.of(plan.assembly());
        plan.selection().open().forEach(planned::set);
        plan.selection().aside().forEach(asides::set);
        for (int joint : Numbers.in(planned)) {
            before.put(joint, new BitSet());
        }
        for (int without : Numbers.in(planned)) {
            BitSet unreached = (BitSet) planned.clone();
            unreached.andNot(reached(without));
            for (int joint : Numbers.in(unreached)) {
                BitSet needed = before.get(joint);
                if (joint != without && needed != null) {
                    needed.set(without);
                }
            }
        }
    }

    /** By the number of each step the numbers of the steps before it that it needs, ascending. */
    public static Map<Integer, List<Integer>> of(Plan plan) {
        Needs needs = new Needs(plan);
        Map<Integer, List<Integer>> all = new LinkedHashMap<>();
        for (int i = 0; i < plan.steps().size(); i++) {
            all.put(plan.steps().get(i).number(), needs.of(i));
        }
        return all;
    }

    /** What can be opened while one joint stays shut. */
    private BitSet reached(int shut) {
        Accessibility access = new Accessibility(network);
        BitSet open = new BitSet();
        boolean more = true;
        while (more) {
            more = false;
            for (int joint : Numbers.in(planned)) {
                boolean can = joint != shut
                        && !open.get(joint)
                        && Accessibility.inOrder(network, joint, open, planned)
                        && access.canOpen(joint, open, asides);
                if (can) {
                    open.set(joint);
                    more = true;
                }
            }
        }
        return open;
    }

    private List<Integer> of(int at) {
        Step step = plan.steps().get(at);
        Set<Integer> needed = new TreeSet<>();
        for (int i = 0; i < at; i++) {
            Step earlier = plan.steps().get(i);
            boolean height = earlier.act() == Act.HEIGHT || step.act() == Act.HEIGHT;
            if (height || isTied(earlier, step) || isInTheWay(earlier, step)) {
                needed.add(earlier.number());
            }
        }
        return new ArrayList<>(needed);
    }

    /** Whether both are about the same joint or part, or one moves what the other holds. */
    private static boolean isTied(Step earlier, Step step) {
        if (same(earlier.joint(), step.joint()) || same(earlier.part(), step.part())) {
            return true;
        }
        boolean moves = moves(step) && earlier.act() != Act.LOOK && joins(earlier.joint(), step);
        boolean moved = moves(earlier) && joins(step.joint(), earlier);
        boolean aid = earlier.act() == Act.SUPPORT
                || step.act() == Act.RELEASE
                || step.followUp() != null
                || earlier.followUp() != null;
        return moves || moved || aid || step.act() == Act.CHECK && step.joint() == null;
    }

    private static boolean moves(Step step) {
        return switch (step.act()) {
            case TAKE_OFF, OFFER_UP, ASIDE, SUPPORT, RELEASE, LET_DOWN, JACK_UP -> true;
            default -> false;
        };
    }

    private static boolean same(@Nullable Object one, @Nullable Object other) {
        return one != null && one.equals(other);
    }

    private static boolean joins(@Nullable Joint joint, Step step) {
        if (joint == null) {
            return false;
        }
        for (int part : joint.joins()) {
            if (isIndex(step.part(), part)) {
                return true;
            }
            for (Part other : step.with()) {
                if (isIndex(other, part)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isIndex(@Nullable Part part, int index) {
        return part != null && part.index() == index;
    }

    /** Apart, whether the earlier one gives access to this one's joint; together, whether this one would take it away. */
    private boolean isInTheWay(Step earlier, Step step) {
        if (earlier.phase() != step.phase()) {
            return false;
        }
        boolean apart = step.phase() == Phase.APART;
        Joint reached = apart ? step.joint() : earlier.joint();
        BitSet needed = reached == null ? null : before.get(reached.index());
        return needed != null && needed.intersects(gates(apart ? earlier : step));
    }

    /** The joints that a step works on, or that join what it moves. */
    private BitSet gates(Step step) {
        BitSet gates = new BitSet();
        Joint own = step.joint();
        if (own != null && step.act() != Act.LOOK && step.act() != Act.SECOND_LOOK) {
            gates.set(own.index());
        }
        if (moves(step)) {
            for (int joint : Numbers.in(planned)) {
                gates.set(
                        joint,
                        gates.get(joint) || joins(plan.assembly().joints().get(joint), step));
            }
        }
        return gates;
    }
}
