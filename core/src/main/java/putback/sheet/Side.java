package putback.sheet;

/** Which side of the car, seen from the driver's seat. */
public enum Side {
    /** Neither: a shared part, or a sheet without sides. */
    NONE(""),
    LEFT("left"),
    RIGHT("right");

    private final String word;
    private final String prefix;

    Side(String word) {
        this.word = word;
        this.prefix = word.isEmpty() ? "" : word + ".";
    }

    /** {@code left}, {@code right} or nothing. */
    public String word() {
        return word;
    }

    /** {@code left.}, {@code right.} or nothing: what stands before an id. */
    public String prefix() {
        return prefix;
    }

    public Side other() {
        return this == LEFT ? RIGHT : this == RIGHT ? LEFT : NONE;
    }
}
