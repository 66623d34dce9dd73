package putback.plan.selection;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
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
        List<Integer> off = parts(network).filter(ties::off).boxed().toList();
        List<Integer> hung = parts(network).filter(ties::hung).boxed().toList();
        List<FollowUp> followUps = followUps(network, joints);
        long work = joints.stream().mapToLong(network::work).sum()
                + asides.stream().mapToLong(network::asideWork).sum()
                + off.stream().mapToLong(network::handling).sum()
                + hung.stream().mapToLong(network::handling).sum()
                + followUps.stream()
                        .mapToLong(followUp -> followUp.minutes().millionths())
                        .sum();
        return new Selection(
                list(joints), off, hung, list(asides), followUps, spoiled(demand, joints), new Minutes(work));
    }

    private static IntStream parts(Network network) {
        return IntStream.range(1, network.parts());
    }

    private static List<FollowUp> followUps(Network network, BitSet joints) {
        BitSet due = new BitSet();
        joints.stream().forEach(joint -> {
            for (int followUp : network.brings(joint)) {
                due.set(followUp);
            }
        });
        List<FollowUp> all = network.assembly().sheet().followUps();
        return due.stream().mapToObj(all::get).toList();
    }

    private static List<Integer> spoiled(Demand demand, BitSet joints) {
        BitSet spoiled = new BitSet();
        joints.stream().forEach(joint -> {
            for (int part : demand.spoils(joint)) {
                spoiled.set(part);
            }
        });
        spoiled.andNot(demand.renewed());
        return list(spoiled);
    }

    private static List<Integer> list(BitSet bits) {
        return bits.stream().boxed().toList();
    }
}
