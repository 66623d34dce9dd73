package putback.plan.oracle;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.TreeSet;
import putback.plan.selection.Selection;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;
import putback.sheet.FollowUp;

/** A selection by itself: rules 1 to 7, what it costs, and what it lists. */
final class SelectionCheck {
    private final List<String> complaints = new ArrayList<>();
    private final Rules rules;
    private final BitSet joints = new BitSet();
    private final BitSet asides = new BitSet();

    private SelectionCheck(Assembly assembly, Selection selection) {
        this.rules = new Rules(assembly);
        selection.open().forEach(joints::set);
        selection.aside().forEach(asides::set);
    }

    /** Empty when the selection is sound and says what it is. */
    static List<String> complaints(Assembly assembly, Wanted wanted, Selection selection) {
        SelectionCheck check = new SelectionCheck(assembly, selection);
        check.check(new Duty(check.rules, wanted), selection);
        return check.complaints;
    }

    private void check(Duty duty, Selection selection) {
        complain(!duty.fulfilled(joints), "the joints opened do not free all that is renewed, or open a unit inside");
        complain(!rules.sound(joints, asides), "the joints opened have no sound order");
        complain(selection.work().millionths() != rules.work(joints, asides), "work is not the sum of its parts");
        BitSet off = new BitSet();
        BitSet hung = new BitSet();
        Bonds bonds = rules.bonds(joints);
        for (int p = 1; p < rules.assembly().parts().size(); p++) {
            off.set(p, bonds.off(p));
            hung.set(p, bonds.hung(p));
        }
        checkList("off", selection.off(), off);
        checkList("hung", selection.hung(), hung);
        checkList("spoiled", selection.spoiled(), duty.spoiled(joints));
        checkList("open", selection.open(), joints);
        checkList("aside", selection.aside(), asides);
        TreeSet<Integer> brought = new TreeSet<>();
        joints.stream().forEach(j -> brought.addAll(rules.brings(j)));
        List<FollowUp> followUps = rules.assembly().sheet().followUps();
        complain(
                !selection
                        .followUps()
                        .equals(brought.stream().map(followUps::get).toList()),
                "the follow-ups are not those that the joints bring");
    }

    private void checkList(String name, List<Integer> found, BitSet expected) {
        complain(
                !found.equals(expected.stream().boxed().toList()),
                name + " lists " + found + " where " + expected + " would be right");
    }

    private void complain(boolean wrong, String sentence) {
        if (wrong) {
            complaints.add(sentence);
        }
    }
}
