package putback.plan.oracle;

import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import putback.sheet.Joint;
import putback.sheet.JointKind;
import putback.sheet.Part;
import putback.sheet.StoredEnergy;

/** Which seats a spring stands in, pads between it and what bears it included. */
final class StandingSprings {
    private final Rules rules;

    StandingSprings(Rules rules) {
        this.rules = rules;
    }

    /** Whether opening the joint takes a spring out of a seat, and what bears that spring is in one piece with the part. */
    boolean leaves(int joint, int part, Bonds bonds) {
        return rules.assembly().parts().stream()
                .filter(spring -> spring.entry().storedEnergy() == StoredEnergy.SPRING)
                .anyMatch(spring -> leaves(spring, joint, part, bonds));
    }

    /** Whether springs bear on the part, and none of them leaves a seat in this plan. */
    boolean allStay(int part, Bonds bonds, Collection<Integer> opened) {
        List<Integer> seats = rules.assembly().joints().stream()
                .map(Joint::index)
                .filter(joint -> leaves(joint, part, bonds))
                .toList();
        return !seats.isEmpty() && seats.stream().noneMatch(opened::contains);
    }

    private boolean leaves(Part spring, int joint, int part, Bonds bonds) {
        TreeSet<Integer> inside = new TreeSet<>();
        inside.add(spring.index());
        TreeSet<Integer> bearing = new TreeSet<>();
        boolean own = false;
        int before = 0;
        while (inside.size() > before) {
            before = inside.size();
            for (Joint seat : rules.assembly().joints()) {
                if (seat.entry().kind() != JointKind.SEAT
                        || seat.joins().stream().noneMatch(inside::contains)) {
                    continue;
                }
                own |= seat.index() == joint;
                for (int other : seat.joins()) {
                    (isPad(other) ? inside : bearing).add(other);
                }
            }
        }
        bearing.removeAll(inside);
        return own && bearing.stream().anyMatch(end -> end == part || end != 0 && bonds.held(end, part));
    }

    private boolean isPad(int part) {
        return part != 0
                && rules.jointsOf(part).stream()
                        .allMatch(joint -> rules.joint(joint).entry().kind() == JointKind.SEAT);
    }
}
