package putback.plan.selection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Network;
import putback.sheet.Joint;
import putback.sheet.Unit;

/**
 * What a wish means on one car: joints that must be opened, joints that must stay closed, and which parts opening a
 * joint ruins.
 */
public final class Demand {
    private final Network network;
    private final BitSet required = new BitSet();
    private final BitSet forbidden = new BitSet();
    private final BitSet renewed = new BitSet();
    private final int[][] spoils;

    private Demand(Network network, Wanted wanted) {
        this.network = network;
        List<Unit> units = widestUnits(wanted);
        BitSet covered = new BitSet();
        for (Unit unit : units) {
            BitSet inside = bits(unit.parts());
            covered.or(inside);
            demandUnit(inside);
        }
        renewed.or(covered);
        for (Target target : wanted.targets()) {
            if (target instanceof Target.OfPart one && !covered.get(one.part().index())) {
                renewed.set(one.part().index());
                require(one.part().index());
            }
        }
        spoils = new int[network.joints()][];
        for (Joint joint : network.assembly().joints()) {
            spoils[joint.index()] = without(joint.spoils(), covered);
        }
        spread();
    }

    private static int[] without(List<Integer> parts, BitSet covered) {
        int[] left = new int[parts.size()];
        int count = 0;
        for (int part : parts) {
            if (!covered.get(part)) {
                left[count++] = part;
            }
        }
        return Arrays.copyOf(left, count);
    }

    public static Demand of(Network network, Wanted wanted) {
        return new Demand(network, wanted);
    }

    /** A unit covers its parts and smaller units inside it if they are named too. */
    private static List<Unit> widestUnits(Wanted wanted) {
        List<Unit> named = new ArrayList<>();
        for (Target target : wanted.targets()) {
            if (target instanceof Target.OfUnit one) {
                named.add(one.unit());
            }
        }
        List<Unit> widest = new ArrayList<>();
        for (Unit unit : named) {
            if (!isCovered(unit, named)) {
                widest.add(unit);
            }
        }
        return widest;
    }

    private static boolean isCovered(Unit unit, List<Unit> named) {
        for (Unit other : named) {
            if (isWider(other, unit)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWider(Unit other, Unit unit) {
        if (other.index() == unit.index() || !other.parts().containsAll(unit.parts())) {
            return false;
        }
        boolean same = unit.parts().containsAll(other.parts());
        return !same || other.index() < unit.index();
    }

    private void demandUnit(BitSet inside) {
        for (int joint = 0; joint < network.joints(); joint++) {
            int joinedInside = 0;
            int[] joined = network.joins(joint);
            for (int part : joined) {
                joinedInside += inside.get(part) ? 1 : 0;
            }
            if (joinedInside == joined.length) {
                forbidden.set(joint);
            } else if (joinedInside > 0) {
                required.set(joint);
            }
        }
    }

    private void require(int part) {
        for (int joint : network.jointsOf(part)) {
            required.set(joint);
        }
    }

    /** What a required joint spoils is renewed too, and so on. */
    private void spread() {
        BitSet seen = new BitSet();
        while (seen.cardinality() < required.cardinality()) {
            BitSet now = (BitSet) required.clone();
            now.andNot(seen);
            seen.or(now);
            for (int joint = now.nextSetBit(0); joint >= 0; joint = now.nextSetBit(joint + 1)) {
                for (int part : spoils[joint]) {
                    require(part);
                }
            }
        }
    }

    private static BitSet bits(List<Integer> values) {
        BitSet bits = new BitSet();
        for (int value : values) {
            bits.set(value);
        }
        return bits;
    }

    public Network network() {
        return network;
    }

    /** Joints that are opened in every plan. */
    public BitSet required() {
        return (BitSet) required.clone();
    }

    /** Joints inside a unit that is renewed in one piece. */
    public BitSet forbidden() {
        return (BitSet) forbidden.clone();
    }

    /** Parts renewed because they are wanted, those of wanted units included. */
    public BitSet renewed() {
        return (BitSet) renewed.clone();
    }

    /** Parts that opening a joint ruins, without those that go with a renewed unit anyway. */
    public int[] spoils(int joint) {
        return spoils[joint].clone();
    }
}
