package putback.sheet;

/** Where the mechanic stands. */
public enum Station implements Worded {
    WHEEL_WELL("wheel well"),
    ENGINE_BAY("engine bay"),
    UNDERNEATH("underneath"),
    CABIN("cabin"),
    BOOT("boot"),
    BENCH("bench");

    private final String word;

    Station(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
