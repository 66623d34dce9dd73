package putback.app.learning;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import putback.ledger.Did;
import putback.ledger.Event;

/**
 * What a note at a joint says of a fastener that will not move; docs/carside.md has the form.
 *
 * <pre>
 * Will not move (stuck)
 * Will not move (stuck): tried heat, no
 * Will not move (stuck): tried heat, yes
 * Moved (stuck)
 * </pre>
 *
 * @param joint with its side
 * @param resort its id; empty where none is named
 */
record StuckNote(String joint, Kind kind, String resort) {
    enum Kind {
        BEGINS,
        FAILED,
        WORKED,
        MOVED
    }

    private static final Pattern TRIED =
            Pattern.compile("Will not move \\([a-z ]+\\): tried ([a-z0-9][a-z0-9-]*), (yes|no)");
    private static final Pattern BEGINS = Pattern.compile("Will not move \\([a-z ]+\\)");
    private static final Pattern MOVED = Pattern.compile("Moved \\([a-z ]+\\).*", Pattern.DOTALL);

    /** Null for an event that says something else. */
    static @Nullable StuckNote of(Event event) {
        String joint = event.joint();
        String said = event.reason();
        if (event.did() != Did.NOTE || joint == null || said == null) {
            return null;
        }
        Matcher tried = TRIED.matcher(said);
        if (tried.matches()) {
            return new StuckNote(joint, "yes".equals(tried.group(2)) ? Kind.WORKED : Kind.FAILED, tried.group(1));
        }
        if (BEGINS.matcher(said).matches()) {
            return new StuckNote(joint, Kind.BEGINS, "");
        }
        return MOVED.matcher(said).matches() ? new StuckNote(joint, Kind.MOVED, "") : null;
    }
}
