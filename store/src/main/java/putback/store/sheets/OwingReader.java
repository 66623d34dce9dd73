package putback.store.sheets;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.ledger.Event;
import putback.ledger.Promised;
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
        List<Event> done = lines == null ? List.of() : EventLines.of(events, lines, reader.faults);
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
}
