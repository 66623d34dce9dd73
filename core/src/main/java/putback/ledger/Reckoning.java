package putback.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/** Adds up what a car still owes. */
final class Reckoning {
    private final CarStory story;
    private final Promised promised;
    private final List<String> stands = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    private Reckoning(CarStory story) {
        this.story = story;
        this.promised = story.promised;
    }

    static Owing of(CarStory story) {
        return new Reckoning(story).owing();
    }

    private Owing owing() {
        List<Debt> debts = new ArrayList<>();
        Map<String, String> untorqued = new LinkedHashMap<>();
        for (Map.Entry<String, JointStory> joint : story.joints.entrySet()) {
            debts.addAll(JointDebts.of(joint.getKey(), joint.getValue(), promised, story.followUps.due()));
            untorqued(joint.getKey(), joint.getValue(), untorqued);
            if (joint.getValue().isDatedBackwards()) {
                remarks.add(promised.name(joint.getKey())
                        + ": its tightening is dated before it was undone; a clock is wrong, or it was written down"
                        + " late. Look whether it is tight.");
            }
        }
        debts.addAll(story.parts.debts());
        debts.addAll(story.followUps.debts());
        debts.sort(Harm.WORST_FIRST);
        Height height = story.footing.stated();
        if (height != null && height != Height.ON_WHEELS) {
            stands.add(
                    height == Height.RAISED
                            ? "the car still stands raised"
                            : "the car still stands at ride height on its supports");
        }
        return split(debts, untorqued);
    }

    private void untorqued(String joint, JointStory told, Map<String, String> untorqued) {
        Event tightened = told.tightened();
        if (tightened == null || tightened.untorqued() == null) {
            return;
        }
        untorqued.put(joint, tightened.untorqued());
        Fixing fixing = promised.joints().get(joint);
        boolean critical = Harm.isCritical(joint) || fixing != null && fixing.secondLook();
        if (critical && tightened.torqueNm() == null) {
            stands.add(promised.nameInside(joint) + " tightened without a reading");
        }
    }

    private Owing split(List<Debt> debts, Map<String, String> untorqued) {
        List<Debt> owes = new ArrayList<>();
        List<Owing.Carried> carried = new ArrayList<>();
        for (Debt debt : debts) {
            Event carry = carry(debt);
            if (carry == null) {
                owes.add(debt);
            } else {
                carried.add(new Owing.Carried(debt, carry.by(), carry.reason() == null ? "" : carry.reason()));
            }
        }
        return new Owing(owes, carried, untorqued, stands, remarks);
    }

    /** The last that is about it; null for none. */
    private @Nullable Event carry(Debt debt) {
        Event found = null;
        for (Event carry : story.carries) {
            found = debt.isAbout(carry) ? carry : found;
        }
        return found;
    }
}
