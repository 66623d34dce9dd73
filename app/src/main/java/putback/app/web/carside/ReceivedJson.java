package putback.app.web.carside;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import putback.app.json.JsonWriter;
import putback.ledger.Event;
import putback.ledger.chain.Merged;
import putback.store.books.Received;

/** What a device is told of what it sent. */
final class ReceivedJson {
    private ReceivedJson() {}

    static String of(Received.Kept kept, String now) {
        Merged merged = kept.merged();
        Set<Event> waiting = new HashSet<>(merged.waiting());
        List<String> there = ids(merged.appended());
        for (Event event : merged.known()) {
            if (!waiting.contains(event)) {
                there.add(String.valueOf(event.id()));
            }
        }
        JsonWriter json = new JsonWriter(400).beginObject();
        json.key("now").value(now).key("last").value(kept.last());
        json.key("kept").strings(there);
        json.key("waiting").strings(ids(merged.waiting()));
        json.key("gaps").beginArray();
        for (Merged.Gap gap : merged.gaps()) {
            json.beginObject().key("device").value(gap.device());
            json.key("from")
                    .value((int) gap.from())
                    .key("to")
                    .value((int) gap.to())
                    .endObject();
        }
        json.endArray().key("refused").beginArray();
        for (Merged.Refused refused : merged.refused()) {
            json.beginObject().key("id").value(refused.id());
            json.key("because").value(refused.because()).endObject();
        }
        return json.endArray().endObject().toString();
    }

    private static List<String> ids(List<Event> events) {
        List<String> ids = new ArrayList<>();
        events.forEach(event -> ids.add(String.valueOf(event.id())));
        return ids;
    }
}
