package putback.plan.oracle;

import java.util.BitSet;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.sheet.Joint;
import putback.sheet.Unit;

/**
 * Rule 1: what has to be opened and what must stay closed for what is wanted.
 *
 * <p>Readings. A part named besides a unit that has it in it is covered by the unit and asks for nothing of its own. Of
 * two units wanted, each asks for its own: a joint that one wants open and the other closed cannot be satisfied. A part
 * that is spoiled is renewed like a part asked for, unless a unit that is wanted has it in it.
 */
final class Duty {
    final BitSet mustOpen = new BitSet();
    final BitSet mustStay = new BitSet();
    /** Parts of units that are wanted. */
    final BitSet covered = new BitSet();
    /** Parts wanted by themselves. */
    final BitSet single = new BitSet();

    private final Rules rules;

    Duty(Rules rules, Wanted wanted) {
        this.rules = rules;
        for (Target target : wanted.targets()) {
            if (target instanceof Target.OfUnit ofUnit) {
                unit(ofUnit.unit());
            }
        }
        for (Target target : wanted.targets()) {
            if (target instanceof Target.OfPart ofPart) {
                part(ofPart.part().index());
            }
        }
    }

    private void unit(Unit unit) {
        unit.parts().forEach(covered::set);
        for (Joint joint : rules.assembly().joints()) {
            long inside = joint.joins().stream().filter(unit.parts()::contains).count();
            if (inside == joint.joins().size()) {
                mustStay.set(joint.index());
            } else if (inside > 0) {
                mustOpen.set(joint.index());
            }
        }
    }

    private void part(int part) {
        if (!covered.get(part)) {
            single.set(part);
            rules.jointsOf(part).forEach(mustOpen::set);
        }
    }

    /** Whether some joint would have to be both open and closed. */
    boolean contradictory() {
        return mustOpen.intersects(mustStay);
    }

    /** Parts that opening these joints ruins and that are renewed although nobody asked. */
    BitSet spoiled(BitSet open) {
        BitSet spoiled = new BitSet();
        open.stream().forEach(j -> rules.joint(j).spoils().forEach(spoiled::set));
        spoiled.andNot(covered);
        spoiled.andNot(single);
        return spoiled;
    }

    boolean fulfilled(BitSet open) {
        BitSet missing = (BitSet) mustOpen.clone();
        missing.andNot(open);
        return missing.isEmpty()
                && !open.intersects(mustStay)
                && spoiled(open).stream()
                        .allMatch(part -> rules.jointsOf(part).stream().allMatch(open::get));
    }
}
