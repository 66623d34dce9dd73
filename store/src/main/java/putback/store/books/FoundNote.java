package putback.store.books;

import java.util.List;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.store.database.Change;

/**
 * A note that says that something was found: {@code Found, soon: hose cracked}. It goes into the book of findings in the
 * same moment in which the event is kept, so once, however often a device sends it.
 */
final class FoundNote {
    private static final String START = "Found, ";
    private static final List<String> URGENCIES = List.of("stop driving", "soon", "watch");

    private FoundNote() {}

    static void keep(Books books, Change change, String job, Event event) {
        String said = event.reason();
        if (event.did() != Did.NOTE || said == null) {
            return;
        }
        for (String urgency : URGENCIES) {
            String start = START + urgency + ": ";
            if (said.startsWith(start) && !said.substring(start.length()).isBlank()) {
                String place = event.joint() != null ? event.joint() : event.part() != null ? event.part() : "";
                String words = said.substring(start.length()).strip();
                new Findings(books).add(change, Finding.seen(job, place, words, urgency, "", event.by()));
            }
        }
    }
}
