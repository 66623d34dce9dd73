package putback.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/**
 * What a job still owes.
 *
 * @param owes the most harmful first
 * @param carried what stays open on purpose; with any of it the car is not to be driven
 * @param untorqued joints that were tightened without a figure, with the reason
 */
public record Owing(List<Debt> owes, List<Carried> carried, Map<String, String> untorqued) {
    /** A debt that stays open on purpose. */
    public record Carried(Debt debt, String by, String reason) {}

    public Owing {
        owes = List.copyOf(owes);
        carried = List.copyOf(carried);
        untorqued = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(untorqued));
    }

    /** Whether the job may be handed over. */
    public boolean isSettled() {
        return owes.isEmpty();
    }

    /**
     * Folds the events in their order; one whose id was there already counts once.
     *
     * @param promised by the plan; what the ledger opened beyond it counts too
     */
    public static Owing of(Promised promised, List<Event> events) {
        Fold fold = new Fold(promised);
        Set<String> seen = new LinkedHashSet<>();
        for (Event event : events) {
            if (event.id() == null || seen.add(event.id())) {
                fold.add(event);
            }
        }
        return fold.owing();
    }

    private static final class Fold {
        private final Promised promised;
        private final Map<String, JointStory> joints = new LinkedHashMap<>();
        private final PartStory parts;
        private final FollowUpStory followUps;
        private final List<Event> carries = new ArrayList<>();
        private @Nullable Height standing;

        private Fold(Promised promised) {
            this.promised = promised;
            this.parts = new PartStory(promised);
            this.followUps = new FollowUpStory(promised);
        }

        private void add(Event event) {
            if (event.did() == Did.HEIGHT && event.height() != null) {
                standing = event.height();
            }
            if (event.joint() != null && event.did() != Did.CARRY) {
                joints.computeIfAbsent(event.joint(), id -> new JointStory()).add(event, standing);
            }
            parts.add(event);
            followUps.add(event);
            if (event.did() == Did.CARRY) {
                carries.add(event);
            }
        }

        private Owing owing() {
            List<Debt> debts = new ArrayList<>();
            Map<String, String> untorqued = new LinkedHashMap<>();
            for (Map.Entry<String, JointStory> entry : joints.entrySet()) {
                debts.addAll(JointDebts.of(
                        entry.getKey(), entry.getValue(), promised.joints().get(entry.getKey())));
                Event tightened = entry.getValue().tightened();
                if (tightened != null && tightened.untorqued() != null) {
                    untorqued.put(entry.getKey(), tightened.untorqued());
                }
            }
            debts.addAll(parts.debts());
            debts.addAll(followUps.debts());
            debts.sort(Harm.WORST_FIRST);
            return split(debts, untorqued);
        }

        private Owing split(List<Debt> debts, Map<String, String> untorqued) {
            List<Debt> owes = new ArrayList<>();
            List<Carried> carried = new ArrayList<>();
            for (Debt debt : debts) {
                Event carry = carry(debt);
                if (carry == null) {
                    owes.add(debt);
                } else {
                    carried.add(new Carried(debt, carry.by(), carry.reason() == null ? "" : carry.reason()));
                }
            }
            return new Owing(owes, carried, untorqued);
        }

        private @Nullable Event carry(Debt debt) {
            for (Event carry : carries) {
                if (debt.isAbout(carry)) {
                    return carry;
                }
            }
            return null;
        }
    }
}
