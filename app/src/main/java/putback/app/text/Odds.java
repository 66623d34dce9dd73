package putback.app.text;

/** Chances as a person says them. */
public final class Odds {
    private static final double CLOSE = 0.02;

    private Odds() {}

    /**
     * Such as {@code 4 in 5}, {@code 1 in 12}, {@code 97 in 100} or {@code next to never}.
     *
     * @param chance 0 to 1
     */
    public static String said(double chance) {
        if (chance <= 0) {
            return "never";
        }
        if (chance >= 1) {
            return "for sure";
        }
        if (chance < 0.001) {
            return "less than 1 in 1000";
        }
        if (chance > 0.999) {
            return "all but surely";
        }
        for (int of = 2; of <= 5; of++) {
            long count = Math.round(chance * of);
            if (count > 0 && count < of && Math.abs(chance - (double) count / of) < CLOSE) {
                return count + " in " + of;
            }
        }
        return chance < 0.15 ? "1 in " + Math.round(1 / chance) : Math.round(chance * 100) + " in 100";
    }
}
