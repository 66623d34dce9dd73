package putback.app.web.carside;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import putback.app.web.frame.Visitor;
import putback.ledger.Event;
import putback.ledger.Signature;

/**
 * Whose an event is. Where people sign in, it is that of whoever is signed in, and a name in the event is not believed:
 * what was written down under another name says so, and no second look comes of it. Elsewhere the name stands as it was
 * said.
 */
final class Believed {
    private final Visitor visitor;
    private final Map<String, Event> there = new HashMap<>();

    /**
     * @param stored what the job's ledger has already; sent again by somebody else it stays as it is there
     */
    Believed(Visitor visitor, List<Event> stored) {
        this.visitor = visitor;
        for (Event event : stored) {
            if (event.id() != null) {
                there.put(event.id(), event);
            }
        }
    }

    List<Event> all(List<Event> sent) {
        if (!visitor.isSignedIn()) {
            return sent;
        }
        List<Event> believed = new ArrayList<>();
        for (Event event : sent) {
            believed.add(believed(event));
        }
        return believed;
    }

    private Event believed(Event event) {
        Event kept = there.get(event.id());
        if (kept != null && isSame(kept, event)) {
            return kept;
        }
        return event.by().equals(visitor.name()) ? event : written(event);
    }

    private static boolean isSame(Event one, Event other) {
        return one.did() == other.did()
                && Objects.equals(one.joint(), other.joint())
                && Objects.equals(one.part(), other.part())
                && Objects.equals(one.at(), other.at())
                && one.signature().device().equals(other.signature().device())
                && Objects.equals(one.signature().seq(), other.signature().seq());
    }

    private Event written(Event event) {
        Signature signature = event.signature();
        String said = "written down under the name " + event.by();
        return new Event(
                new Signature(signature.id(), signature.at(), visitor.name(), signature.device(), signature.seq()),
                event.did(),
                event.joint(),
                event.part(),
                event.with(),
                event.aid(),
                event.followUp(),
                event.height(),
                event.torqueNm(),
                event.angleDeg(),
                event.wrench(),
                event.untorqued(),
                event.reason() == null ? said : event.reason() + "; " + said,
                event.corrects());
    }
}
