package putback.ledger;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a job still owes.
 *
 * @param owes the most harmful first
 * @param carried what stays open on purpose; with any of it the car is not to be driven
 * @param untorqued joints that were tightened without a figure, with the reason
 * @param stands why else the car is not to be driven: a wheel that nobody measured, a car still raised
 * @param remarks what is doubtful about the ledger itself
 */
public record Owing(
        List<Debt> owes,
        List<Carried> carried,
        Map<String, String> untorqued,
        List<String> stands,
        List<String> remarks) {
    /** A debt that stays open on purpose. */
    public record Carried(Debt debt, String by, String reason) {}

    public Owing {
        owes = List.copyOf(owes);
        carried = List.copyOf(carried);
        untorqued = Collections.unmodifiableMap(new LinkedHashMap<>(untorqued));
        stands = List.copyOf(stands);
        remarks = List.copyOf(remarks);
    }

    /** Whether the job may be handed over. */
    public boolean isSettled() {
        return owes.isEmpty();
    }

    /** Whether nothing is owed, nothing stays open, and nothing else keeps the car where it stands. */
    public boolean mayBeDriven() {
        return owes.isEmpty() && carried.isEmpty() && stands.isEmpty();
    }

    /**
     * Folds the events in their order; one whose id was there already counts once, one that was corrected not at all.
     *
     * @param promised by the plan; what the ledger opened beyond it counts too
     */
    public static Owing of(Promised promised, List<Event> events) {
        return Standing.of(promised, events).owing();
    }
}
