package putback.app.json;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.ledger.AidOn;
import putback.ledger.Handover;
import putback.ledger.JointState;
import putback.ledger.PartState;
import putback.ledger.PlanStep;
import putback.ledger.Standing;
import putback.ledger.WrenchUse;

/** How a car stands, among the keys of what it owes. */
final class StandingJson {
    private StandingJson() {}

    static void write(JsonWriter json, Standing standing) {
        Handover card = Handover.of(standing);
        json.key("state").beginObject();
        json.key("height")
                .value(standing.height() == null ? null : standing.height().word());
        json.key("where").value(card.where());
        json.key("mustNot").strings(card.mustNot());
        json.key("joints").beginObject();
        for (Map.Entry<String, JointState> joint : standing.joints().entrySet()) {
            json.key(joint.getKey()).value(joint.getValue().word());
        }
        json.endObject();
        json.key("parts").beginObject();
        for (Map.Entry<String, PartState> part : standing.parts().entrySet()) {
            json.key(part.getKey()).value(part.getValue().word());
        }
        json.endObject();
        json.key("renewed").strings(java.util.List.copyOf(standing.renewed()));
        aids(json, standing);
        json.key("fastenersOut").value(standing.fastenersOut());
        json.key("fastenersReplaced").value(standing.fastenersReplaced());
        uses(json, standing);
        json.key("next");
        step(json, card.next());
        json.key("left").beginArray();
        for (PlanStep step : standing.toDo()) {
            json.value(step.number());
        }
        json.endArray();
        json.key("lastBy")
                .value(standing.last().by().isEmpty() ? null : standing.last().by());
        json.key("lastAt")
                .value(
                        standing.last().at() == null
                                ? null
                                : standing.last().at().toString());
        json.endObject();
    }

    private static void aids(JsonWriter json, Standing standing) {
        json.key("aids").beginArray();
        for (AidOn aid : standing.aids()) {
            json.beginObject().key("aid").value(aid.aid().isEmpty() ? null : aid.aid());
            json.key("part").value(aid.part()).endObject();
        }
        json.endArray();
    }

    private static void uses(JsonWriter json, Standing standing) {
        json.key("wrenches").beginArray();
        for (WrenchUse use : standing.wrenchUses()) {
            json.beginObject().key("wrench").value(use.wrench());
            json.key("at").value(use.at() == null ? null : use.at().toString());
            json.key("operations").value(use.operations()).endObject();
        }
        json.endArray();
    }

    private static void step(JsonWriter json, @Nullable PlanStep step) {
        if (step == null) {
            json.value((String) null);
            return;
        }
        json.beginObject()
                .key("n")
                .value(step.number())
                .key("do")
                .value(step.did().word());
        json.key("joint").value(step.joint()).key("part").value(step.part());
        json.key("text").value(step.text()).endObject();
    }
}
