package putback.plan.selection;

/**
 * How much searching has been done, and how much may be. It is counted in numbers looked at and never in time, so that
 * the same question always gets the same answer.
 */
public final class Effort {
    private long limit;
    private long spent;

    private Effort(long limit) {
        this.limit = limit;
    }

    /** For whoever wants the proof, however long it takes. */
    public static Effort unlimited() {
        return new Effort(Long.MAX_VALUE);
    }

    /**
     * @param limit in numbers looked at; a processor looks at some 3,000,000,000 a second
     */
    public static Effort of(long limit) {
        return new Effort(limit);
    }

    void spend(long numbers) {
        spent += numbers;
    }

    /** What may be spent in all, in numbers looked at. */
    public long limit() {
        return limit;
    }

    /** Whether more has been spent than may be. */
    public boolean usedUp() {
        return spent > limit;
    }

    /** Allows so much from now on. */
    public void allow(long more) {
        limit = spent + more;
    }
}
