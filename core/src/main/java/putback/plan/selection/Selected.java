package putback.plan.selection;

/** The least work, or that there is no way. */
public sealed interface Selected {
    record Sound(Selection selection) implements Selected {}

    /**
     * Nothing sound opens all that is asked for.
     *
     * @param deadlock a smallest set that lock each other
     */
    record Locked(Deadlock deadlock) implements Selected {}
}
