package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Network;
import putback.plan.access.Numbers;
import putback.plan.access.Ties;
import putback.sheet.Assembly;
import putback.sheet.Joint;

/** Finds what is left on its pivots alone and flops over. */
final class Pivots {
    private final Network network;
    private final Assembly assembly;
    /** For each part the joints that do not turn. */
    private final int[][] stiffJoints;
    /** What each joint joins. */
    private final int[][] joins;

    private final BitSet uprightWhenWhole;

    Pivots(Network network) {
        this.network = network;
        this.assembly = network.assembly();
        this.stiffJoints = new int[network.parts()][];
        for (int part = 0; part < stiffJoints.length; part++) {
            stiffJoints[part] = stiffJoints(part);
        }
        this.joins = new int[network.joints()][];
        for (int joint = 0; joint < joins.length; joint++) {
            joins[joint] = network.joins(joint);
        }
        this.uprightWhenWhole = stiff(0, new BitSet());
    }

    private int[] stiffJoints(int part) {
        BitSet stiff = new BitSet();
        for (int joint : network.jointsOf(part)) {
            stiff.set(joint, !assembly.joints().get(joint).entry().pivot());
        }
        return Numbers.in(stiff);
    }

    /**
     * Groups that are still held to the car, but by pivots only, since a joint that held them upright is open. What turned
     * on its pivots from the start, a link or an arm, is not meant.
     */
    List<BitSet> flopping(BitSet open) {
        Ties ties = new Ties(network);
        ties.rebuild(open);
        List<BitSet> groups = new ArrayList<>();
        BitSet seen = new BitSet();
        for (int part = 1; part < network.parts(); part++) {
            if (seen.get(part) || network.isTether(part) || !ties.heldToBody(part)) {
                continue;
            }
            BitSet group = stiff(part, open);
            seen.or(group);
            if (!group.get(0) && (uprightWhenWhole.intersects(group) || hasLostHold(group, open, ties))) {
                groups.add(group);
            }
        }
        return groups;
    }

    /** Whether it is a part by itself that one pivot alone still holds, with nothing hung on it. */
    boolean isLooseEnd(BitSet group, BitSet open) {
        int closed = 0;
        for (int joint : network.jointsOf(group.nextSetBit(0))) {
            closed += open.get(joint) ? 0 : 1;
        }
        return group.cardinality() == 1 && closed == 1;
    }

    /** What closed joints that do not turn make one stiff piece with the part. */
    BitSet stiff(int part, BitSet open) {
        BitSet group = new BitSet();
        int[] found = new int[network.parts()];
        int count = 1;
        found[0] = part;
        group.set(part);
        for (int next = 0; next < count; next++) {
            for (int joint : stiffJoints[found[next]]) {
                if (open.get(joint)) {
                    continue;
                }
                for (int other : joins[joint]) {
                    if (!group.get(other) && !network.isTether(other)) {
                        group.set(other);
                        found[count++] = other;
                    }
                }
            }
        }
        return group;
    }

    private boolean hasLostHold(BitSet group, BitSet open, Ties ties) {
        for (int index = open.nextSetBit(0); index >= 0; index = open.nextSetBit(index + 1)) {
            Joint joint = assembly.joints().get(index);
            if (!joint.entry().pivot() && Numbers.anyIn(joint.joins(), group) && holdsElsewhere(joint, group, ties)) {
                return true;
            }
        }
        return false;
    }

    private boolean holdsElsewhere(Joint joint, BitSet group, Ties ties) {
        for (int part : joint.joins()) {
            if (!group.get(part) && !network.isTether(part) && ties.heldToBody(part)) {
                return true;
            }
        }
        return false;
    }
}
