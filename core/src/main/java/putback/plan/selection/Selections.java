package putback.plan.selection;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Network;
import putback.plan.access.Ties;
import putback.quantity.Minutes;
import putback.sheet.FollowUp;

/** What opening joints and moving parts aside amounts to. */
public final class Selections {
    private Selections() {}

    /** The selection that opens the given joints and moves the given parts aside, with its work. */
    public static Selection of(Demand demand, BitSet joints, BitSet asides) {
        Network network = demand.network();
        Ties ties = new Ties(network);
        ties.rebuild(joints);
        List<Integer> off = new ArrayList<>();
        List<Integer> hung = new ArrayList<>();
        long work = 0;
        for (int part = 1; part < network.parts(); part++) {
            boolean isOff = ties.off(part);
            boolean isHung = ties.hung(part);
            if (isOff) {
                off.add(part);
                work += network.handling(part);
            }
            if (isHung) {
                hung.add(part);
                work += network.handling(part);
            }
        }
        for (int joint = joints.nextSetBit(0); joint >= 0; joint = joints.nextSetBit(joint + 1)) {
            work += network.work(joint);
        }
        for (int part = asides.nextSetBit(0); part >= 0; part = asides.nextSetBit(part + 1)) {
            work += network.asideWork(part);
        }
        List<FollowUp> followUps = followUps(network, joints);
        for (FollowUp followUp : followUps) {
            work += followUp.minutes().millionths();
        }
        return new Selection(
                list(joints),
                List.copyOf(off),
                List.copyOf(hung),
                list(asides),
                followUps,
                spoiled(demand, joints),
                new Minutes(work));
    }

    private static List<FollowUp> followUps(Network network, BitSet joints) {
        BitSet due = new BitSet();
        for (int joint = joints.nextSetBit(0); joint >= 0; joint = joints.nextSetBit(joint + 1)) {
            for (int followUp : network.brings(joint)) {
                due.set(followUp);
            }
        }
        List<FollowUp> followUps = new ArrayList<>();
        for (int index : list(due)) {
            followUps.add(network.assembly().sheet().followUps().get(index));
        }
        return List.copyOf(followUps);
    }

    private static List<Integer> spoiled(Demand demand, BitSet joints) {
        BitSet spoiled = new BitSet();
        for (int joint = joints.nextSetBit(0); joint >= 0; joint = joints.nextSetBit(joint + 1)) {
            for (int part : demand.spoils(joint)) {
                spoiled.set(part);
            }
        }
        spoiled.andNot(demand.renewed());
        return list(spoiled);
    }

    private static List<Integer> list(BitSet bits) {
        List<Integer> values = new ArrayList<>();
        for (int bit = bits.nextSetBit(0); bit >= 0; bit = bits.nextSetBit(bit + 1)) {
            values.add(bit);
        }
        return List.copyOf(values);
    }
}
