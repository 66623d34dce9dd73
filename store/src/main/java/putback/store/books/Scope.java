package putback.store.books;

/**
 * What a job renews, and on what terms.
 *
 * @param sheet id of a stock sheet, or {@code car} for the car's own
 * @param renew names of parts and units with commas between
 * @param side left, right or both
 * @param terms of the price, as its page keeps them: {@code name=value} with {@code &} between
 * @param rust grades, as its page keeps them
 */
public record Scope(String sheet, String renew, String side, String terms, String rust) {
    /** Nothing named yet. */
    public static final Scope NONE = new Scope("", "", "both", "", "");

    /** Whether something is named. */
    public boolean named() {
        return !sheet.isEmpty() && !renew.isEmpty();
    }
}
