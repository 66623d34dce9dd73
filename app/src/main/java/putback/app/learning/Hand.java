package putback.app.learning;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.ledger.Did;
import putback.ledger.Event;

/** One person's time: what each thing that was written down took, from what the same person wrote before it. */
final class Hand {
    private static final String INTERRUPTED = "Interrupted: ";
    private static final String WENT_ON = "Went on";
    private static final long NOT_KNOWN = -1;
    /** Done with the eyes; ticked with the step it belongs to. */
    private static final Set<Did> LOOKS = Set.of(Did.LOOK, Did.CHECK);

    private @Nullable Event last;
    private boolean away;
    private Span step = new Span();
    private @Nullable Jam jam;
    private @Nullable Instant stepped;
    private @Nullable Work before;
    private @Nullable Instant triedAt;
    private Span tryBefore = new Span();

    /** What a step took, and whether it was ticked together with others afterwards. */
    static final class Work {
        private final Span span;
        private boolean together;

        private Work(Span span) {
            this.span = span;
        }

        Span span() {
            return span;
        }

        boolean together() {
            return together;
        }

        private void afterwards() {
            together = true;
            span.forget();
        }
    }

    /** One fastener that will not move. */
    private static final class Jam {
        private final String joint;
        private boolean seen;
        private Span trying = new Span();

        private Jam(String joint) {
            this.joint = joint;
        }
    }

    /** Whatever it is that was written down, the time up to it has passed. */
    void pass(Event event) {
        long piece = piece(event);
        if (away && !isNote(event, WENT_ON)) {
            piece = NOT_KNOWN;
        } else if (away) {
            piece = 0;
        }
        away = isNote(event, INTERRUPTED);
        (jam == null ? step : jam.trying).add(piece);
        if (event.did() == Did.BREAK) {
            step.forget();
        }
        last = event;
    }

    private long piece(Event event) {
        Instant from = last == null ? null : last.at();
        Instant to = event.at();
        if (last == null || from == null || to == null || !sameDevice(last, event)) {
            return NOT_KNOWN;
        }
        long millis = Duration.between(from, to).toMillis();
        return millis > Lessons.LONGEST.toMillis() ? NOT_KNOWN : Math.max(NOT_KNOWN, millis);
    }

    private static boolean sameDevice(Event one, Event other) {
        return one.signature().device().equals(other.signature().device());
    }

    private static boolean isNote(Event event, String start) {
        String said = event.reason();
        return event.did() == Did.NOTE && said != null && said.startsWith(start);
    }

    /** Ends a step of the plan. A fastener that is still being tried then has come undone, nobody knows when. */
    Work step(Event event) {
        if (jam != null) {
            step.forget();
            jam = null;
        }
        Work work = new Work(step);
        step = new Span();
        if (LOOKS.contains(event.did())) {
            return work;
        }
        if (isRightAfter(stepped, event.at()) && before != null) {
            before.afterwards();
            work.afterwards();
        }
        stepped = event.at();
        before = work;
        return work;
    }

    private static boolean isRightAfter(@Nullable Instant one, @Nullable Instant other) {
        return one != null
                && other != null
                && Duration.between(one, other).abs().compareTo(Lessons.SHORTEST) < 0;
    }

    /** A fastener begins to withstand. */
    void begins(String joint) {
        jam = new Jam(joint);
    }

    /** Whether a fastener of the joint is shown to withstand that was not shown before. */
    boolean isAnother(String joint) {
        Jam here = here(joint);
        boolean another = !here.seen;
        here.seen = true;
        return another;
    }

    /** Ends a try, and says how long it took. */
    Span tried(Event event, String joint, boolean worked) {
        Jam here = here(joint);
        Span took = here.trying;
        if (isRightAfter(triedAt, event.at())) {
            tryBefore.forget();
            took.forget();
        }
        triedAt = event.at();
        tryBefore = took;
        here.trying = new Span();
        jam = worked ? null : here;
        return took;
    }

    /** It came undone, by something that is in no list. */
    void moved() {
        jam = null;
    }

    /** The one that is being tried; where nobody wrote that it began, it began some time before. */
    private Jam here(String joint) {
        Jam known = jam;
        if (known != null && known.joint.equals(joint)) {
            return known;
        }
        step.forget();
        Jam late = new Jam(joint);
        late.trying.forget();
        jam = late;
        return late;
    }
}
