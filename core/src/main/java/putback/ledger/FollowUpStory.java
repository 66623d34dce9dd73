package putback.ledger;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which follow-ups are due: one is, once a joint that brings it was opened, until it is done after that. */
final class FollowUpStory {
    private final Promised promised;
    private final Set<String> due = new LinkedHashSet<>();

    FollowUpStory(Promised promised) {
        this.promised = promised;
    }

    void add(Event event) {
        if (event.did() == Did.UNDO && event.joint() != null) {
            for (Map.Entry<String, List<String>> followUp : promised.followUps().entrySet()) {
                boolean anything = followUp.getValue().isEmpty();
                if (anything || followUp.getValue().contains(event.joint())) {
                    due.add(followUp.getKey());
                }
            }
        }
        if (event.did() == Did.FOLLOW_UP && event.followUp() != null) {
            due.remove(event.followUp());
        }
    }

    List<Debt> debts() {
        List<Debt> debts = new ArrayList<>();
        for (String followUp : due) {
            debts.add(
                    new Debt(Debt.Kind.FOLLOW_UP, null, null, followUp, "brought by what was opened, not done since"));
        }
        return debts;
    }
}
