package putback.sheet;

/** How the car stands while a step is done. */
public enum Height implements Worded {
    RAISED("raised"),
    RIDE_HEIGHT("ride height"),
    ON_WHEELS("on wheels"),
    /** The step does not mind: the car stays as it stands. */
    ANY("any");

    private final String word;

    Height(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
