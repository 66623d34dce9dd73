package putback.sheet;

/** The state of the thread that a torque is stated for. */
public enum Condition implements Worded {
    DRY("dry"),
    OILED("oiled"),
    LOCKER("locker");

    private final String word;

    Condition(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
