package putback.plan.oracle;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.TreeMap;
import putback.sheet.Joint;

/**
 * Parts that a choice lets go of the body although it does not count them: a part that is off or hung is one that is not
 * held to the body, and when all joints around a group without the body are open, nothing holds its parts to the body.
 */
final class LooseCuts {
    /** When all joints around are open, these parts are off or hung. */
    record Cut(List<Integer> parts, BitSet around) {}

    private final Rules rules;

    LooseCuts(Rules rules) {
        this.rules = rules;
    }

    /**
     * @param counted parts that the choice counts as off or hung
     */
    List<Cut> of(BitSet open, BitSet counted) {
        Bonds bonds = rules.bonds(open);
        List<Cut> cuts = new ArrayList<>();
        TreeMap<Integer, BitSet> groups = new TreeMap<>();
        BitSet all = new BitSet();
        BitSet missed = new BitSet();
        for (int p = 1; p < rules.assembly().parts().size(); p++) {
            if (bonds.heldToBody(p)) {
                continue;
            }
            missed.set(p, !counted.get(p));
            if (rules.part(p).isTether()) {
                if (missed.get(p)) {
                    cuts.add(new Cut(List.of(p), around(withTouched(p, bonds), p)));
                }
            } else {
                all.set(p);
                groups.computeIfAbsent(bonds.pieceOf(p), k -> new BitSet()).set(p);
            }
        }
        groups.values().stream()
                .filter(missed::intersects)
                .forEach(group -> cuts.add(new Cut(group.stream().boxed().toList(), around(group, -1))));
        if (missed.intersects(all)) {
            cuts.add(new Cut(all.stream().boxed().toList(), around(all, -1)));
        }
        return cuts;
    }

    private BitSet withTouched(int tether, Bonds bonds) {
        BitSet touched = bonds.touched(tether);
        BitSet group = new BitSet();
        for (int p = 1; p < rules.assembly().parts().size(); p++) {
            if (!rules.part(p).isTether() && touched.get(bonds.pieceOf(p))) {
                group.set(p);
            }
        }
        return group;
    }

    /** Joints that hold a rigid part of the group, or the tether, to a rigid part outside. */
    private BitSet around(BitSet group, int tether) {
        BitSet around = new BitSet();
        for (Joint joint : rules.assembly().joints()) {
            boolean inside = joint.joins().stream().anyMatch(p -> p == tether || group.get(p));
            boolean outside = joint.joins().stream()
                    .anyMatch(p -> !group.get(p) && !rules.part(p).isTether());
            if (inside && outside) {
                around.set(joint.index());
            }
        }
        return around;
    }
}
