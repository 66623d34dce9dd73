package putback.plan.selection;

import java.util.BitSet;
import putback.plan.access.Network;
import putback.plan.access.Numbers;

/**
 * What a plan pays for, numbered in one row: opening a joint, letting a part leave its place (handling), moving a part
 * aside, and doing a follow-up.
 *
 * <p>A joint can be opened only once what it brings and ruins is paid for as well, so that the least work is the
 * cheapest set of items with which every required joint can be opened.
 */
final class Items {
    /** Minutes are scaled so that, among equal work, the plan with fewer open joints is the cheaper one. */
    static final long SCALE = 1L << 12;

    final int joints;
    final int parts;
    final int count;
    final long[] weight;
    private final int[][] payments;

    Items(Demand demand) {
        Network network = demand.network();
        var followUps = network.assembly().sheet().followUps();
        joints = network.joints();
        parts = network.parts();
        count = joints + 2 * parts + followUps.size();
        weight = new long[count];
        payments = new int[joints][];
        for (int joint = 0; joint < joints; joint++) {
            weight[joint] = network.work(joint) * SCALE + 1;
            payments[joint] = payments(demand, joint);
        }
        for (int part = 0; part < parts; part++) {
            weight[handling(part)] = network.handling(part) * SCALE;
            weight[aside(part)] = network.asideWork(part) * SCALE;
        }
        for (int i = 0; i < followUps.size(); i++) {
            weight[followUp(i)] = followUps.get(i).minutes().millionths() * SCALE;
        }
    }

    static BitSet single(int item) {
        BitSet one = new BitSet();
        one.set(item);
        return one;
    }

    private int[] payments(Demand demand, int joint) {
        BitSet due = new BitSet();
        for (int followUp : demand.network().brings(joint)) {
            due.set(followUp(followUp));
        }
        for (int part : demand.spoils(joint)) {
            due.set(handling(part));
            for (int other : demand.network().jointsOf(part)) {
                due.set(other);
            }
        }
        due.clear(joint);
        return Numbers.in(due);
    }

    int handling(int part) {
        return joints + part;
    }

    int aside(int part) {
        return joints + parts + part;
    }

    int followUp(int index) {
        return joints + 2 * parts + index;
    }

    /** What has to be paid for before the joint is opened, itself left out. */
    int[] payments(int joint) {
        return payments[joint];
    }

    /** Whether everything that opening the joint brings is among the items. */
    boolean paid(int joint, BitSet items) {
        for (int item : payments[joint]) {
            if (!items.get(item)) {
                return false;
            }
        }
        return true;
    }

    BitSet handled(BitSet items) {
        return items.get(joints, joints + parts);
    }

    BitSet asides(BitSet items) {
        return items.get(joints + parts, joints + 2 * parts);
    }
}
