package putback.ledger;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/** What happened to one joint, folded event by event; what came before it was last opened counts no more. */
final class JointStory {
    private static final Duration FRESH_LIGHT = Duration.ofMinutes(10);

    private boolean opened;
    private boolean loosened;
    private boolean started;
    private boolean replaced;
    private boolean broken;
    private @Nullable Event tightened;
    private @Nullable Height height;
    private boolean looked;

    /**
     * @param standing how the car stands by the events before; null where none says
     */
    void add(Event event, @Nullable Height standing) {
        switch (event.did()) {
            case UNDO -> reopen();
            case BREAK_LOOSE -> {
                loosened = true;
                tightened = null;
                looked = false;
            }
            case START, RUN_DOWN -> started = true;
            case REPLACE_FASTENER -> {
                if (tightened != null) {
                    reopen();
                }
                replaced = true;
                broken = false;
            }
            case BREAK -> broken = true;
            case TIGHTEN -> {
                started = true;
                tightened = event;
                height = event.height() == null ? standing : event.height();
                looked = false;
            }
            case SECOND_LOOK -> looked |= isLook(event);
            default -> {}
        }
    }

    private void reopen() {
        opened = true;
        loosened = false;
        started = false;
        replaced = false;
        tightened = null;
        looked = false;
    }

    /** By another person, or by the same one ten minutes later. */
    private boolean isLook(Event look) {
        Event last = tightened;
        if (last == null) {
            return false;
        }
        Instant then = last.at();
        Instant now = look.at();
        if (then != null && now != null && now.isBefore(then)) {
            return false;
        }
        String one = last.by().strip();
        String other = look.by().strip();
        if (!one.isEmpty() && !other.isEmpty() && !one.equalsIgnoreCase(other)) {
            return true;
        }
        return then != null && now != null && Duration.between(then, now).compareTo(FRESH_LIGHT) >= 0;
    }

    /** Opened, or broken loose and left so. */
    boolean isTouched() {
        return opened || loosened;
    }

    boolean isOpen() {
        return opened && !started;
    }

    boolean isStarted() {
        return started;
    }

    boolean isReplaced() {
        return replaced;
    }

    boolean isBroken() {
        return broken;
    }

    boolean isLookedAt() {
        return looked;
    }

    /** The last tightening that still holds; null for none. */
    @Nullable
    Event tightened() {
        return tightened;
    }

    /** At which it was tightened; null where nobody says. */
    @Nullable
    Height height() {
        return height;
    }
}
