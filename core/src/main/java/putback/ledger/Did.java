package putback.ledger;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What an event says was done: the step words of a plan, and what no plan foresees. */
public enum Did {
    HEIGHT,
    BREAK_LOOSE,
    MARK,
    SUPPORT,
    UNDO,
    TAKE_OFF,
    ASIDE,
    RENEW,
    CLEAN,
    OFFER_UP,
    START,
    RUN_DOWN,
    TIGHTEN,
    RELEASE,
    SECOND_LOOK,
    FOLLOW_UP,
    LET_DOWN,
    JACK_UP,
    PREPARE,
    LOOK,
    CHECK,
    BREAK,
    REPLACE_FASTENER,
    CARRY,
    CORRECT,
    NOTE;

    /** As files spell it: {@code second-look}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Null for a word that is none of them. */
    public static @Nullable Did of(String word) {
        for (Did did : values()) {
            if (did.word().equals(word)) {
                return did;
            }
        }
        return null;
    }
}
