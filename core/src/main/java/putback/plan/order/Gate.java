package putback.plan.order;

/**
 * What has to be open before one joint can be: a mask of joints, and clauses of which each is met by one of its ways.
 *
 * @param before joints that all have to be open
 * @param clauses each a list of ways
 * @param never whether it can never be opened among these joints
 */
record Gate(long before, Way[][] clauses, boolean never) {

    /** One way of having a part out of the way: of every set, one joint open; and all of {@code opens}. */
    record Way(long[] oneOfEach, long opens) {
        boolean met(long done) {
            if ((opens & done) != opens) {
                return false;
            }
            for (long set : oneOfEach) {
                if ((set & done) == 0) {
                    return false;
                }
            }
            return true;
        }
    }

    boolean isOpen(long done) {
        if (never || (before & done) != before) {
            return false;
        }
        for (Way[] clause : clauses) {
            if (!anyMet(clause, done)) {
                return false;
            }
        }
        return true;
    }

    private static boolean anyMet(Way[] clause, long done) {
        for (Way way : clause) {
            if (way.met(done)) {
                return true;
            }
        }
        return false;
    }
}
