package putback.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/** Which follow-ups are due: one is, once a joint that brings it was opened, until it is done after that. */
final class FollowUpStory {
    private final Promised promised;
    private final Set<String> due = new LinkedHashSet<>();
    private final Map<String, Done> done = new LinkedHashMap<>();

    /**
     * How one was done.
     *
     * @param wrongly the height, where it is another one than was asked for; else null
     * @param tooEarly those that should have come before it and had not been done
     */
    private record Done(@Nullable Height wrongly, List<String> tooEarly) {}

    FollowUpStory(Promised promised) {
        this.promised = promised;
    }

    FollowUpStory copy() {
        FollowUpStory copy = new FollowUpStory(promised);
        copy.due.addAll(due);
        copy.done.putAll(done);
        return copy;
    }

    Set<String> due() {
        return due;
    }

    /**
     * @param footing how the car stands by the events before
     */
    void add(Event event, Footing footing) {
        if (event.did() == Did.UNDO && event.joint() != null) {
            for (Map.Entry<String, PlanStep.Errand> followUp :
                    promised.followUps().entrySet()) {
                List<String> by = followUp.getValue().broughtBy();
                if (by.isEmpty() || by.contains(event.joint())) {
                    due.add(followUp.getKey());
                    done.remove(followUp.getKey());
                }
            }
        }
        String id = event.followUp();
        if (event.did() == Did.FOLLOW_UP && id != null && (due.remove(id) || done.containsKey(id))) {
            done.put(id, done(event, promised.followUps().getOrDefault(id, PlanStep.Errand.PLAIN), footing));
        }
    }

    private Done done(Event event, PlanStep.Errand asked, Footing footing) {
        List<String> tooEarly = new ArrayList<>();
        for (String before : asked.follows()) {
            if (due.contains(before)) {
                tooEarly.add(before);
            }
        }
        return new Done(footing.otherThan(asked.height(), event), tooEarly);
    }

    List<Debt> debts() {
        List<Debt> debts = new ArrayList<>();
        for (String followUp : due) {
            debts.add(owed(followUp, "brought by what was opened, not done since"));
        }
        for (Map.Entry<String, Done> one : done.entrySet()) {
            String late = oneDoneSince(one.getValue());
            Height wrongly = one.getValue().wrongly();
            if (late != null) {
                debts.add(owed(one.getKey(), "done too early; this comes before it: " + promised.nameInside(late)));
            } else if (wrongly != null) {
                Height asked = promised.followUps()
                        .getOrDefault(one.getKey(), PlanStep.Errand.PLAIN)
                        .height();
                debts.add(
                        owed(one.getKey(), "to be done " + Footing.where(asked) + ", done " + Footing.where(wrongly)));
            }
        }
        return debts;
    }

    /** What should have come first and has been done since; while it is due it is owed itself. */
    private @Nullable String oneDoneSince(Done one) {
        for (String before : one.tooEarly()) {
            if (!due.contains(before)) {
                return before;
            }
        }
        return null;
    }

    private static Debt owed(String followUp, String detail) {
        return new Debt(Debt.Kind.FOLLOW_UP, null, null, followUp, detail);
    }
}
