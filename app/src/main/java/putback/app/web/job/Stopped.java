package putback.app.web.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import putback.app.papers.HouseStyle;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Promised;
import putback.store.books.Books;

/** Fixings at which the work stands still until somebody decides: the note {@code Stopped (WAY): what was tried}. */
final class Stopped {
    private static final String STOPPED = "Stopped (";

    private Stopped() {}

    /** One line for each, until it is opened, moved or gone on with. */
    static List<String> lines(Promised promised, List<Event> done, HouseStyle style) {
        Set<String> struck = new TreeSet<>();
        for (Event event : done) {
            String corrects = event.corrects();
            if (event.did() == Did.CORRECT && corrects != null) {
                struck.add(corrects);
            }
        }
        Map<String, Event> stands = new LinkedHashMap<>();
        for (Event event : done) {
            String joint = event.joint();
            if (joint != null && (event.id() == null || !struck.contains(event.id()))) {
                add(stands, joint, event);
            }
        }
        List<String> lines = new ArrayList<>();
        stands.forEach((joint, event) -> lines.add(promised.name(joint) + ", " + event.by() + ", "
                + (event.at() == null ? "" : JobView.when(Books.text(event.at()), style) + ", ") + tried(event)));
        return lines;
    }

    private static void add(Map<String, Event> stands, String joint, Event event) {
        String said = event.reason() == null ? "" : event.reason();
        if (event.did() == Did.NOTE && said.startsWith(STOPPED)) {
            stands.put(joint, event);
        } else if (event.did() == Did.UNDO
                || event.did() == Did.BREAK_LOOSE
                || said.startsWith("Moved (")
                || said.startsWith("Will not move (") && said.endsWith(", yes")
                || said.equals("Went on")) {
            stands.remove(joint);
        }
    }

    private static String tried(Event event) {
        String said = event.reason() == null ? "" : event.reason();
        int at = said.indexOf("): ");
        return at < 0 ? said : said.substring(STOPPED.length(), at) + "; " + said.substring(at + 3);
    }
}
