package putback.ledger;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/** What happened to one joint, folded event by event; what came before it was last opened counts no more. */
final class JointStory {
    private static final Duration FRESH_LIGHT = Duration.ofMinutes(10);

    private boolean opened;
    private boolean loosened;
    private boolean started;
    private boolean runDown;
    private boolean replaced;
    private boolean replacedWhenTight;
    private boolean broken;
    private @Nullable Event undone;
    private @Nullable Event seated;
    private @Nullable Event tightened;
    private @Nullable Height height;
    private Set<String> owedThen = Set.of();
    private boolean looked;
    private boolean lookedWhenSeated;

    JointStory copy() {
        JointStory copy = new JointStory();
        copy.opened = opened;
        copy.loosened = loosened;
        copy.started = started;
        copy.runDown = runDown;
        copy.replaced = replaced;
        copy.replacedWhenTight = replacedWhenTight;
        copy.broken = broken;
        copy.undone = undone;
        copy.seated = seated;
        copy.tightened = tightened;
        copy.height = height;
        copy.owedThen = owedThen;
        copy.looked = looked;
        copy.lookedWhenSeated = lookedWhenSeated;
        return copy;
    }

    /**
     * @param standing how the car stands by the events before; null where none says
     * @param due follow-ups that are due by the events before
     */
    void add(Event event, @Nullable Height standing, Set<String> due) {
        switch (event.did()) {
            case UNDO -> {
                reopen();
                undone = event;
            }
            case BREAK_LOOSE -> {
                loosened = true;
                tightened = null;
                looked = false;
            }
            case START, RUN_DOWN -> {
                started = true;
                runDown |= event.did() == Did.RUN_DOWN;
                seated = event;
                lookedWhenSeated = false;
            }
            case REPLACE_FASTENER -> replace();
            case BREAK -> broken = true;
            case TIGHTEN -> {
                started = true;
                tightened = event;
                height = event.height() == null ? standing : event.height();
                owedThen = Set.copyOf(due);
                looked = false;
            }
            case SECOND_LOOK -> {
                looked |= isLook(tightened, event);
                lookedWhenSeated |= isLook(seated, event);
            }
            default -> {}
        }
    }

    private void replace() {
        if (tightened != null) {
            reopen();
            replacedWhenTight = true;
        }
        opened = true;
        replaced = true;
        broken = false;
    }

    private void reopen() {
        opened = true;
        loosened = false;
        started = false;
        runDown = false;
        replaced = false;
        replacedWhenTight = false;
        undone = null;
        seated = null;
        tightened = null;
        looked = false;
        lookedWhenSeated = false;
    }

    /** By another person, or by the same one ten minutes later. */
    private static boolean isLook(@Nullable Event closed, Event look) {
        if (closed == null) {
            return false;
        }
        Instant then = closed.at();
        Instant now = look.at();
        if (then != null && now != null && now.isBefore(then)) {
            return false;
        }
        String one = bare(closed.by());
        String other = bare(look.by());
        if (!one.isEmpty() && !other.isEmpty() && !one.equals(other)) {
            return true;
        }
        return then != null && now != null && Duration.between(then, now).compareTo(FRESH_LIGHT) >= 0;
    }

    /** A name without its stops, spaces and case: "Ann" and "ann." are one person. */
    private static String bare(String name) {
        StringBuilder bare = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char letter = name.charAt(i);
            if (Character.isLetterOrDigit(letter) || Character.isSurrogate(letter)) {
                bare.append(Character.toLowerCase(letter));
            }
        }
        return bare.toString();
    }

    /** Opened, broken loose and left so, or closed by somebody who never said that it was open. */
    boolean isTouched() {
        return opened || loosened || started;
    }

    /** Whether it was opened, or loosened, whoever closed it since. */
    boolean isOpenedOrLoosened() {
        return opened || loosened || seated != null;
    }

    boolean isOpen() {
        return opened && !started;
    }

    boolean isStarted() {
        return started;
    }

    boolean isRunDown() {
        return runDown;
    }

    boolean isLoosened() {
        return loosened;
    }

    boolean isReplaced() {
        return replaced;
    }

    boolean isReplacedWhenTight() {
        return replacedWhenTight;
    }

    boolean isBroken() {
        return broken;
    }

    /**
     * @param threaded whether its last tightening is what is looked at, or only how it was closed
     */
    boolean isLookedAt(boolean threaded) {
        return threaded ? looked : looked || lookedWhenSeated;
    }

    /** Whether the last tightening is dated before the undoing that the ledger has ahead of it. */
    boolean isDatedBackwards() {
        Event first = undone;
        Event then = tightened;
        Instant opening = first == null ? null : first.at();
        Instant closing = then == null ? null : then.at();
        return opening != null && closing != null && closing.isBefore(opening);
    }

    /** Whether the follow-up was still due when it was tightened. */
    boolean wasOwedThen(String followUp) {
        return owedThen.contains(followUp);
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
