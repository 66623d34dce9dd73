package putback.app.learning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.labour.price.Observed;
import putback.labour.seized.RustGrades;
import putback.ledger.Event;
import putback.quantity.Parsed;
import putback.sheet.Assembly;
import putback.sheet.JointEntry;
import putback.store.books.Job;
import putback.store.books.KeptEvent;
import putback.store.books.Lesson;
import putback.store.sheets.EventLines;
import putback.store.sheets.EventsRead;
import putback.store.sheets.Read;

/** What a job of the books teaches, each lesson under the family of sheets to which it belongs. */
final class JobLessons {
    private final Sheets sheets;

    JobLessons(Sheets sheets) {
        this.sheets = sheets;
    }

    /** Nothing where its sheet or its ledger cannot be read. */
    List<Lesson> of(Job job, List<KeptEvent> ledger) {
        String named = job.scope().sheet();
        String sheet = named.equals("car") ? sheets.ofCar(job.car()) : named;
        List<String> roots = sheets.roots(sheet);
        List<Event> events = events(ledger);
        if (events.isEmpty() || roots.isEmpty() || !(sheets.read(sheet) instanceof Read.Sheet read)) {
            return List.of();
        }
        Set<String> ofFirst = roots.size() == 1 ? Set.of() : joints(roots.get(0));
        List<Lesson> lessons = new ArrayList<>();
        for (Observed seen : Lessons.of(events, read.assembly(), rust(job, read.assembly()))) {
            lessons.add(new Lesson(family(seen, roots, ofFirst), seen));
        }
        return lessons;
    }

    private static List<Event> events(List<KeptEvent> ledger) {
        List<Event> events = new ArrayList<>();
        for (KeptEvent kept : ledger) {
            if (!(EventLines.read("event", kept.body()) instanceof EventsRead.Sound sound)) {
                return List.of();
            }
            events.addAll(sound.events());
        }
        return events;
    }

    private static @Nullable RustGrades rust(Job job, Assembly car) {
        String said = job.scope().rust();
        return !said.isBlank()
                        && RustGrades.read(car, List.of(said.split(",", -1))) instanceof Parsed.Value<RustGrades> read
                ? read.value()
                : null;
    }

    /** The first of the sheets below that has the joint; the first of all for what none has, and for resorts. */
    private String family(Observed seen, List<String> roots, Set<String> ofFirst) {
        String joint = seen instanceof Observed.Took took
                ? took.joint()
                : seen instanceof Observed.Rusted rusted ? rusted.joint() : "";
        if (roots.size() > 1 && !joint.isEmpty() && !ofFirst.contains(joint)) {
            for (String root : roots.subList(1, roots.size())) {
                if (joints(root).contains(joint)) {
                    return root;
                }
            }
        }
        return roots.get(0);
    }

    private Set<String> joints(String root) {
        Set<String> ids = new HashSet<>();
        if (sheets.read(root) instanceof Read.Sheet read) {
            for (JointEntry joint : read.assembly().sheet().joints()) {
                ids.add(joint.id());
            }
        }
        return ids;
    }
}
