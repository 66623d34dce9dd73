package putback.store.sheets;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.ledger.Event;
import putback.ledger.Promised;
import putback.quantity.Shown;
import putback.store.sheets.Node.Entries;

/**
 * Reads a plan as {@code putback plan --json} writes it, and a file of events, one JSON object a line. Whatever the files
 * hold, the answer is what they say or a list of faults with their places; nothing is thrown.
 */
public final class OwingReader {
    private final Faults faults = new Faults();

    private OwingReader() {}

    public static OwingRead read(String plan, String events) {
        OwingReader reader = new OwingReader();
        String planText = reader.text(plan, Form.PLAN);
        Promised promised = planText == null ? null : reader.promised(plan, planText);
        String lines = reader.text(events, Form.EVENTS);
        List<Event> done = lines == null ? List.of() : reader.events(events, lines);
        return promised == null || !reader.faults.isEmpty()
                ? new OwingRead.Faulty(reader.faults.sorted())
                : new OwingRead.Sound(promised, done);
    }

    private @Nullable String text(String name, Form form) {
        Place start = Place.startOf(name.isEmpty() ? "file" : name);
        try {
            if (!name.isEmpty()) {
                return SourceText.ofFile(Path.of(name), name, form, faults);
            }
            faults.add(start, "no file is named; give the path of a " + form.thing());
        } catch (InvalidPathException impossible) {
            faults.add(start, "no file can be called that; give the path of a " + form.thing());
        }
        return null;
    }

    private @Nullable Promised promised(String name, String text) {
        String printable = SourceText.printable(text, name, Form.PLAN, faults);
        Entries top = printable == null ? null : Composer.compose(name, printable, Form.PLAN, faults);
        return top == null ? null : new PromiseReader(faults).promised(top);
    }

    private List<Event> events(String name, String text) {
        List<Event> events = new ArrayList<>();
        Map<String, Line> seen = new HashMap<>();
        int number = 0;
        for (String line : text.split("\n", -1)) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            Faults inLine = new Faults();
            String printable = SourceText.printable(line.strip(), name, Form.EVENTS, inLine);
            Entries entries = printable == null ? null : Composer.compose(name, printable, Form.EVENTS, inLine);
            Event event = entries == null ? null : new EventReader(inLine).event(entries);
            if (event != null) {
                sameAgain(event, new Line(number, event), seen, inLine, name);
                events.add(event);
            }
            faults.addShifted(inLine, number - 1);
        }
        return events;
    }

    /** Where an id was first. */
    private record Line(int number, Event event) {}

    /** The same event sent twice is fine; another one under the same id would be lost. */
    private static void sameAgain(Event event, Line here, Map<String, Line> seen, Faults faults, String name) {
        String id = event.id();
        Line first = id == null ? null : seen.putIfAbsent(id, here);
        if (id != null && first != null && !first.event().equals(event)) {
            faults.add(
                    Place.startOf(name),
                    "id \"" + Shown.text(id) + "\" is that of another event, in line " + first.number()
                            + "; an id is used once, and what was written down wrongly is put right with a correct");
        }
    }
}
