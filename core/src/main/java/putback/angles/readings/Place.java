package putback.angles.readings;

/** One of the four wheels. */
public enum Place {
    FRONT_LEFT("front.left", true, true),
    FRONT_RIGHT("front.right", true, false),
    REAR_LEFT("rear.left", false, true),
    REAR_RIGHT("rear.right", false, false);

    private final String word;
    private final boolean front;
    private final boolean left;

    Place(String word, boolean front, boolean left) {
        this.word = word;
        this.front = front;
        this.left = left;
    }

    /** As a file names it: {@code front.left}. */
    public String word() {
        return word;
    }

    /** As a person says it: {@code front left}. */
    public String said() {
        return word.replace('.', ' ');
    }

    public boolean isFront() {
        return front;
    }

    public boolean isLeft() {
        return left;
    }

    static Place of(boolean front, boolean left) {
        return front ? left ? FRONT_LEFT : FRONT_RIGHT : left ? REAR_LEFT : REAR_RIGHT;
    }
}
