package putback.app.json;

import java.util.Map;
import putback.ledger.Debt;
import putback.ledger.Owing;
import putback.ledger.Standing;

/** What a job owes, as one JSON object. */
public final class OwingJson {
    private static final int ROUGH = 600;

    private OwingJson() {}

    /** The object, without a line end. */
    public static String of(Standing standing) {
        Owing owing = standing.owing();
        JsonWriter json = new JsonWriter(ROUGH).beginObject();
        json.key("settled").value(owing.isSettled());
        json.key("owes").beginArray();
        for (Debt debt : owing.owes()) {
            debt(json, debt);
            json.endObject();
        }
        json.endArray();
        json.key("carried").beginArray();
        for (Owing.Carried carried : owing.carried()) {
            debt(json, carried.debt());
            json.key("by").value(carried.by()).key("reason").value(carried.reason());
            json.endObject();
        }
        json.endArray();
        json.key("mayBeDriven").value(owing.mayBeDriven());
        json.key("untorqued").beginArray();
        for (Map.Entry<String, String> joint : owing.untorqued().entrySet()) {
            json.beginObject().key("joint").value(joint.getKey());
            json.key("reason").value(joint.getValue()).endObject();
        }
        json.endArray();
        json.key("notDrivenBecause").strings(owing.stands());
        json.key("remarks").strings(owing.remarks());
        StandingJson.write(json, standing);
        return json.endObject().toString();
    }

    private static void debt(JsonWriter json, Debt debt) {
        json.beginObject().key("kind").value(debt.kind().word());
        json.key("joint").value(debt.joint()).key("part").value(debt.part());
        json.key("followUp").value(debt.followUp()).key("detail").value(debt.detail());
    }
}
