package putback.plan.oracle;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import putback.sheet.Aside;
import putback.sheet.Assembly;
import putback.sheet.FollowUp;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Station;

/** The rules of selection, one method each, as the design states them. */
final class Rules {
    private final Assembly assembly;
    private final List<List<Integer>> jointsOf = new ArrayList<>();
    private final List<List<Integer>> aheadOf = new ArrayList<>();
    private final long[] followUpMinutes;
    private final List<List<Integer>> brings = new ArrayList<>();

    Rules(Assembly assembly) {
        this.assembly = assembly;
        assembly.parts().forEach(part -> jointsOf.add(new ArrayList<>()));
        assembly.joints().forEach(joint -> aheadOf.add(new ArrayList<>()));
        List<FollowUp> followUps = assembly.sheet().followUps();
        followUpMinutes = followUps.stream()
                .mapToLong(followUp -> followUp.minutes().millionths())
                .toArray();
        List<String> ids = followUps.stream().map(FollowUp::id).toList();
        for (Joint joint : assembly.joints()) {
            joint.joins().forEach(part -> jointsOf.get(part).add(joint.index()));
            joint.aheadOf().forEach(later -> aheadOf.get(later).add(joint.index()));
            brings.add(joint.entry().brings().stream().map(ids::indexOf).toList());
        }
    }

    Assembly assembly() {
        return assembly;
    }

    int joints() {
        return assembly.joints().size();
    }

    Joint joint(int index) {
        return assembly.joints().get(index);
    }

    Part part(int index) {
        return assembly.parts().get(index);
    }

    List<Integer> jointsOf(int part) {
        return jointsOf.get(part);
    }

    /** Joints that come first if both are opened. */
    List<Integer> comeFirst(int joint) {
        return aheadOf.get(joint);
    }

    Bonds bonds(BitSet open) {
        return new Bonds(assembly, jointsOf, open);
    }

    /** Rule 3, the second half: whether a part may be moved aside. */
    boolean canGoAside(int part, BitSet open) {
        return part(part).canGoAside() && part(part).asideOpens().stream().allMatch(open::get);
    }

    /** Rule 3: no longer held together with any part that the joint joins, or aside. */
    boolean clear(int part, Joint joint, Bonds bonds, BitSet aside) {
        return aside.get(part) || joint.joins().stream().noneMatch(joined -> bonds.held(part, joined));
    }

    boolean clausesMet(List<List<Integer>> clauses, Joint joint, Bonds bonds, BitSet aside) {
        return clauses.stream().allMatch(clause -> clause.stream().anyMatch(part -> clear(part, joint, bonds, aside)));
    }

    /** Rules 2, 3 and 4; {@code ahead-of} is looked at elsewhere, since it depends on what else is opened. */
    boolean accessible(int index, BitSet open, Bonds bonds, BitSet aside) {
        Joint joint = joint(index);
        return joint.after().stream().allMatch(open::get)
                && (joint.entry().station() != Station.BENCH
                        || joint.joins().stream().allMatch(bonds::off))
                && clausesMet(joint.behind(), joint, bonds, aside);
    }

    /** What opens when everything accessible among the allowed joints is opened, asides being used as soon as may be. */
    BitSet reach(BitSet allowed, BitSet asides, boolean aheadOfCounts) {
        return reach(new BitSet(), allowed, asides, aheadOfCounts);
    }

    /**
     * @param start joints that are known to open
     */
    BitSet reach(BitSet start, BitSet allowed, BitSet asides, boolean aheadOfCounts) {
        BitSet open = (BitSet) start.clone();
        BitSet aside = new BitSet();
        boolean grown = true;
        while (grown) {
            grown = moveAside(asides, open, aside);
            Bonds bonds = bonds((BitSet) open.clone());
            BitSet next = new BitSet();
            for (int j = allowed.nextSetBit(0); j >= 0; j = allowed.nextSetBit(j + 1)) {
                if (!open.get(j)
                        && (!aheadOfCounts || firstOnesOpen(j, allowed, open))
                        && accessible(j, open, bonds, aside)) {
                    next.set(j);
                }
            }
            grown |= !next.isEmpty();
            open.or(next);
        }
        return open;
    }

    private boolean moveAside(BitSet asides, BitSet open, BitSet aside) {
        boolean moved = false;
        for (int p = asides.nextSetBit(0); p >= 0; p = asides.nextSetBit(p + 1)) {
            if (!aside.get(p) && canGoAside(p, open)) {
                aside.set(p);
                moved = true;
            }
        }
        return moved;
    }

    /** {@code ahead-of}: of two that are both opened, the one named first goes first. */
    boolean firstOnesOpen(int joint, BitSet opened, BitSet open) {
        return comeFirst(joint).stream().allMatch(first -> !opened.get(first) || open.get(first));
    }

    /** Rule 7: all of a set can be opened. */
    boolean sound(BitSet joints, BitSet asides) {
        return reach(joints, asides, true).equals(joints);
    }

    /** Rule 6, in millionths of a minute. */
    long work(BitSet joints, BitSet asides) {
        long sum = 0;
        TreeSet<Integer> followUps = new TreeSet<>();
        for (int j = joints.nextSetBit(0); j >= 0; j = joints.nextSetBit(j + 1)) {
            sum += jointCost(j);
            followUps.addAll(brings.get(j));
        }
        for (int followUp : followUps) {
            sum += followUpMinutes[followUp];
        }
        for (int p = asides.nextSetBit(0); p >= 0; p = asides.nextSetBit(p + 1)) {
            sum += asideCost(p);
        }
        Bonds bonds = bonds(joints);
        for (int p = 1; p < assembly.parts().size(); p++) {
            if (bonds.off(p) || bonds.hung(p)) {
                sum += handling(p);
            }
        }
        return sum;
    }

    List<Integer> brings(int joint) {
        return brings.get(joint);
    }

    long followUpCost(int followUp) {
        return followUpMinutes[followUp];
    }

    long jointCost(int joint) {
        return joint(joint).entry().open().millionths()
                + joint(joint).entry().close().millionths();
    }

    long handling(int part) {
        return part(part).entry().handling().millionths();
    }

    long asideCost(int part) {
        Aside aside = Objects.requireNonNull(part(part).entry().aside());
        return aside.minutes().millionths();
    }

    /** Parts that the sheet lets one move aside and that are in the way of something. */
    List<Integer> asidesWorthTrying() {
        BitSet blockers = new BitSet();
        assembly.joints().forEach(joint -> joint.behind().forEach(clause -> clause.forEach(blockers::set)));
        return blockers.stream().filter(p -> part(p).canGoAside()).boxed().toList();
    }
}
