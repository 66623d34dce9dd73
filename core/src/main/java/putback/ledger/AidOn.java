package putback.ledger;

/**
 * A thing on the car only to help.
 *
 * @param aid such as strap; empty where the event names none
 * @param part that it is on
 */
public record AidOn(String aid, String part) {
    /** {@code strap}, or {@code an aid} where nobody says which. */
    public String name() {
        return aid.isEmpty() ? "an aid" : aid;
    }
}
