package putback.app.web.planning;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.app.json.JsonWriter;
import putback.app.json.RowJson;
import putback.labour.price.OwnFigures;
import putback.labour.price.WontMove;
import putback.labour.seized.Refusal;
import putback.labour.seized.Row;
import putback.plan.Plan;
import putback.quantity.Parsed;
import putback.sheet.Joint;

/** For each fixing that is opened and each way it may refuse, what to try; rows that are the same are written once. */
public final class ResortsData {
    /** Only the order depends on it, and that little. */
    private static final BigDecimal RATE = new BigDecimal("60");

    private final Plan plan;
    private final OwnFigures seen;
    private final List<String> rows = new ArrayList<>();
    private final Map<String, Integer> places = new LinkedHashMap<>();

    /**
     * @param seen what the garage has seen itself; what it has tried changes minutes, chances and order
     */
    public ResortsData(Plan plan, OwnFigures seen) {
        this.plan = plan;
        this.seen = seen;
    }

    public void write(JsonWriter json) {
        WontMove wontMove = new WontMove(plan, seen, RATE);
        json.key("resorts").beginObject();
        for (int index : plan.selection().open()) {
            Joint joint = plan.assembly().joints().get(index);
            json.key(joint.id()).beginObject();
            for (Refusal refusal : Refusal.values()) {
                if (wontMove.of(joint, refusal) instanceof Parsed.Value<Row> row) {
                    json.key(refusal.word()).value(place(RowJson.of(row.value())));
                }
            }
            json.endObject();
        }
        json.endObject().key("rows").beginArray();
        rows.forEach(json::raw);
        json.endArray().key("ownTries").beginObject();
        seen.tries().forEach((resort, times) -> json.key(resort).value(times));
        json.endObject();
    }

    private int place(String row) {
        Integer place = places.putIfAbsent(row, rows.size());
        if (place == null) {
            rows.add(row);
            return rows.size() - 1;
        }
        return place;
    }
}
