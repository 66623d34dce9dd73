package putback.ledger.onward;

/** What comes of wanting to undo a joint next. */
public sealed interface Choice {
    /**
     * It is next.
     *
     * @param onward with the plan's other steps after it
     */
    record Accepted(Onward onward) implements Choice {}

    /**
     * It is not, and everything stays as it was.
     *
     * @param because what is in the way, in one sentence
     */
    record Refused(String because) implements Choice {}
}
