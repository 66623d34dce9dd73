package putback.job;

import org.jspecify.annotations.Nullable;

/** Where a job stands. */
public enum Stage {
    ASKED("asked"),
    LOOKED_OVER("looked over"),
    PRICED("priced"),
    AGREED("agreed"),
    UNDER_WAY("under way"),
    TOGETHER("together"),
    HANDED_OVER("handed over"),
    DECLINED("declined");

    private final String words;

    Stage(String words) {
        this.words = words;
    }

    /** As it is said and kept. */
    public String words() {
        return words;
    }

    /** Whether nothing more is done. */
    public boolean ended() {
        return this == HANDED_OVER || this == DECLINED;
    }

    /** Null for words that mean none. */
    public static @Nullable Stage named(String words) {
        for (Stage stage : values()) {
            if (stage.words.equals(words)) {
                return stage;
            }
        }
        return null;
    }
}
