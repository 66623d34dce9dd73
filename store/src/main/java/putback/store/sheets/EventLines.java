package putback.store.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import putback.ledger.Event;
import putback.quantity.Shown;
import putback.store.sheets.Node.Entries;

/** Reads events, one JSON object a line. */
public final class EventLines {
    private EventLines() {}

    /**
     * Reads them, or tells all that is wrong; nothing is thrown.
     *
     * @param name of where they come from, for messages
     */
    public static EventsRead read(String name, String text) {
        Faults faults = new Faults();
        List<Event> events = of(name, text, faults);
        return faults.isEmpty() ? new EventsRead.Sound(events) : new EventsRead.Faulty(faults.sorted());
    }

    static List<Event> of(String name, String text, Faults faults) {
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
