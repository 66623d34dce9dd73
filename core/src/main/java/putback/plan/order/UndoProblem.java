package putback.plan.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Numbers;
import putback.plan.order.Gate.Way;
import putback.sheet.Joint;
import putback.sheet.Part;

/**
 * The order in which chosen joints are opened, for the least set-up.
 *
 * <p>Further joints may be taken as open from the start: what comes out is then no more than the set-up of any plan that
 * opens the chosen ones and some of those.
 */
final class UndoProblem implements OrderProblem {
    private final Network network;
    private final int[] chosen;
    private final BitSet takenAsOpen;
    private final BitSet asides;
    private final long[] bit;
    private final Paths rigid;
    private final Paths any;
    private final Gate[] gates;
    private final boolean[] hard;
    private final Accessibility slow;
    private final Attributes attributes;
    private final long[][] askers;

    /**
     * @param joints to put in order, at most 63
     * @param takenAsOpen joints that count as open from the start
     * @param asides parts that may be moved aside
     */
    UndoProblem(Network network, BitSet joints, BitSet takenAsOpen, BitSet asides) {
        this.network = network;
        this.chosen = Numbers.in(joints);
        this.takenAsOpen = (BitSet) takenAsOpen.clone();
        this.takenAsOpen.andNot(joints);
        this.asides = asides;
        this.bit = new long[network.joints()];
        for (int i = 0; i < chosen.length; i++) {
            bit[chosen[i]] = 1L << i;
        }
        this.rigid = new Paths(network, bit, this.takenAsOpen, false);
        this.any = new Paths(network, bit, this.takenAsOpen, true);
        this.gates = new Gate[chosen.length];
        this.hard = new boolean[chosen.length];
        this.slow = new Accessibility(network);
        for (int i = 0; i < chosen.length; i++) {
            Gate gate = gate(chosen[i]);
            hard[i] = gate == null;
            gates[i] = gate == null ? new Gate(before(chosen[i]), new Way[0][], false) : gate;
        }
        List<Joint> inOrder = new ArrayList<>();
        for (int joint : chosen) {
            inOrder.add(network.assembly().joints().get(joint));
        }
        this.attributes = new Attributes(inOrder, network.assembly().sheet().setups());
        this.askers = attributes.askers();
    }

    private boolean canBeOpen(int joint) {
        return bit[joint] != 0 || takenAsOpen.get(joint);
    }

    private long before(int joint) {
        long before = 0;
        for (int other : network.after(joint)) {
            before |= bit[other];
        }
        for (int other : network.opensBehind(joint)) {
            before |= bit[other];
        }
        return before & ~bit[joint];
    }

    private boolean waitsForever(int joint) {
        for (int other : network.after(joint)) {
            if (!canBeOpen(other) || other == joint) {
                return true;
            }
        }
        return false;
    }

    /** Null when its chains are too many to list. */
    private @Nullable Gate gate(int joint) {
        List<Way[]> clauses = new ArrayList<>();
        for (int[] clause : network.clauses(joint)) {
            List<Way> ways = new ArrayList<>();
            for (int part : clause) {
                long[] chains = rigid.between(part, network.joins(joint));
                if (chains == null) {
                    return null;
                }
                ways.add(new Way(chains, 0));
                addAside(part, ways);
            }
            clauses.add(ways.toArray(new Way[0]));
        }
        if (network.isBench(joint)) {
            for (int part : network.joins(joint)) {
                long[] chains = any.between(part, 0);
                if (chains == null) {
                    return null;
                }
                clauses.add(new Way[] {new Way(chains, 0)});
            }
        }
        return new Gate(before(joint), clauses.toArray(new Way[0][]), waitsForever(joint));
    }

    private void addAside(int part, List<Way> ways) {
        Part one = network.assembly().parts().get(part);
        boolean canGo = asides.get(part);
        long opens = 0;
        for (int joint : one.asideOpens()) {
            canGo &= canBeOpen(joint);
            opens |= bit[joint];
        }
        if (canGo) {
            ways.add(new Way(new long[0], opens));
        }
    }

    /** The joint behind a thing of the order. */
    int joint(int thing) {
        return chosen[thing];
    }

    @Override
    public int size() {
        return chosen.length;
    }

    @Override
    public int start() {
        return 0;
    }

    @Override
    public long ready(long done) {
        long ready = 0;
        for (int thing = 0; thing < chosen.length; thing++) {
            long mask = 1L << thing;
            if ((done & mask) == 0 && gates[thing].isOpen(done) && (!hard[thing] || canOpen(thing, done))) {
                ready |= mask;
            }
        }
        return ready;
    }

    private boolean canOpen(int thing, long done) {
        BitSet open = (BitSet) takenAsOpen.clone();
        for (long rest = done; rest != 0; rest &= rest - 1) {
            open.set(chosen[Long.numberOfTrailingZeros(rest)]);
        }
        return slow.canOpen(chosen[thing], open, asides);
    }

    @Override
    public long cost(int state, int thing) {
        return attributes.cost(state, thing);
    }

    @Override
    public int after(int state, int thing) {
        return attributes.after(state, thing);
    }

    @Override
    public long bound(long done, int state) {
        long all = chosen.length == 0 ? 0 : -1L >>> 64 - chosen.length;
        return attributes.bound(askers, all & ~done, state);
    }
}
