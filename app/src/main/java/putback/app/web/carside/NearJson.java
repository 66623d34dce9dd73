package putback.app.web.carside;

import java.util.LinkedHashSet;
import java.util.Set;
import putback.app.json.JsonWriter;
import putback.plan.Plan;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.Part;

/** For each fixing that is opened: the parts that it joins, and the hoses, wires and shafts that are tied to those. */
final class NearJson {
    private final Plan plan;
    private final Assembly assembly;

    NearJson(Plan plan) {
        this.plan = plan;
        this.assembly = plan.assembly();
    }

    void write(JsonWriter json) {
        json.key("near").beginObject();
        for (int index : plan.selection().open()) {
            Joint joint = assembly.joints().get(index);
            json.key(joint.id()).beginObject();
            json.key("joins").beginArray();
            for (int part : joint.joins()) {
                if (part != 0) {
                    json.value(assembly.parts().get(part).id());
                }
            }
            json.endArray().key("tied").beginArray();
            tied(joint).forEach(json::value);
            json.endArray().endObject();
        }
        json.endObject();
    }

    private Set<String> tied(Joint joint) {
        Set<String> tied = new LinkedHashSet<>();
        for (int part : joint.joins()) {
            for (Joint other : assembly.joints()) {
                if (part != 0 && other.joins().contains(part)) {
                    addTethers(tied, other, joint);
                }
            }
        }
        return tied;
    }

    private void addTethers(Set<String> tied, Joint other, Joint joint) {
        for (int neighbour : other.joins()) {
            Part part = assembly.parts().get(neighbour);
            if (part.isTether() && !joint.joins().contains(neighbour)) {
                tied.add(part.id());
            }
        }
    }
}
