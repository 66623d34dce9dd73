package putback.app.learning;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.labour.price.Observed;
import putback.labour.seized.RustGrades;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Struck;
import putback.sheet.Assembly;
import putback.sheet.Joint;

/**
 * What one job's ledger teaches: minutes of opening and closing, seized fasteners, resorts. The rules, and which of them
 * are assumptions, are in docs/labour.md.
 */
public final class Lessons {
    /** A longer time between two events of one person teaches nothing (assumption: a meal, another car). */
    static final Duration LONGEST = Duration.ofMinutes(30);

    /** Steps that follow one another faster were ticked together, afterwards (assumption). */
    static final Duration SHORTEST = Duration.ofSeconds(5);

    private static final Set<Did> BESIDE = Set.of(Did.NOTE, Did.CARRY, Did.CORRECT, Did.BREAK, Did.REPLACE_FASTENER);

    private final Map<String, Hand> hands = new HashMap<>();
    private final Map<String, JointLesson> joints = new LinkedHashMap<>();
    private final List<Try> tries = new ArrayList<>();

    private record Try(String resort, boolean worked, Span span) {}

    private Lessons(Assembly car) {
        for (Joint joint : car.joints()) {
            joints.put(joint.id(), new JointLesson(joint));
        }
    }

    /**
     * Reads a ledger; the same events teach the same.
     *
     * @param events in the order of the ledger
     * @param car that was worked on
     * @param rust as the job says it; null where nobody said, and then it teaches nothing of seizures
     */
    public static List<Observed> of(List<Event> events, Assembly car, @Nullable RustGrades rust) {
        Lessons lessons = new Lessons(car);
        for (Event event : Struck.remaining(events)) {
            lessons.add(event);
        }
        return lessons.observed(rust);
    }

    private void add(Event event) {
        Hand hand = hands.computeIfAbsent(event.by().strip().toLowerCase(Locale.ROOT), nobody -> new Hand());
        hand.pass(event);
        StuckNote note = StuckNote.of(event);
        if (note != null) {
            stuck(event, note, hand);
        } else if (!BESIDE.contains(event.did())) {
            Hand.Work work = hand.step(event);
            JointLesson joint = event.joint() == null ? null : joints.get(event.joint());
            if (joint != null) {
                joint.add(event.did(), work);
            }
        }
    }

    private void stuck(Event event, StuckNote note, Hand hand) {
        if (note.kind() == StuckNote.Kind.BEGINS) {
            hand.begins(note.joint());
            return;
        }
        boolean another = hand.isAnother(note.joint());
        JointLesson joint = joints.get(note.joint());
        if (another && joint != null) {
            joint.jammed();
        }
        if (note.kind() == StuckNote.Kind.MOVED) {
            hand.moved();
        } else {
            boolean worked = note.kind() == StuckNote.Kind.WORKED;
            tries.add(new Try(note.resort(), worked, hand.tried(event, note.joint(), worked)));
        }
    }

    private List<Observed> observed(@Nullable RustGrades rust) {
        List<Observed> all = new ArrayList<>();
        joints.values().forEach(joint -> joint.teach(all, rust));
        for (Try one : tries) {
            all.add(new Observed.Tried(one.resort, one.worked, one.span.minutes()));
        }
        return List.copyOf(all);
    }
}
