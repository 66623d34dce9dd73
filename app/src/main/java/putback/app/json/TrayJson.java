package putback.app.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.tools.Limits;
import putback.plan.tools.TrayAid;
import putback.quantity.Torque;
import putback.tightening.toolbox.Have;
import putback.tightening.toolbox.Tightened;

/** What the toolbox has for a plan, among the keys of the plan. */
final class TrayJson {
    private TrayJson() {}

    /**
     * @param limits null for a step that tightens to no known torque
     * @param tightened null where no toolbox is known
     */
    static void step(JsonWriter json, @Nullable Limits limits, @Nullable Tightened tightened) {
        if (limits == null) {
            return;
        }
        span(json, "windowNm", limits.least(), limits.most());
        if (tightened instanceof Tightened.Untorqued untorqued) {
            json.key("wrench").value((String) null);
            json.key("untorqued").value(untorqued.because());
        } else if (tightened instanceof Tightened.With with) {
            json.key("wrench").beginObject();
            json.key("id").value(with.wrench().id());
            json.key("settingNm").number(plain(with.setting()));
            json.key("settingLbfFt").number(with.setting().poundFeet());
            span(json, "readingNm", with.window().low(), with.window().high());
            json.key("due").strings(with.due());
            json.key("remarks").strings(with.remarks());
            json.endObject();
        }
    }

    static void span(JsonWriter json, String key, Torque low, Torque high) {
        json.key(key).beginArray();
        json.number(plain(low)).number(plain(high));
        json.endArray();
    }

    /** To a millionth, so that a tenth of a figure is not followed by binary noise. */
    private static double plain(Torque torque) {
        return Math.rint(torque.newtonMetres() * 1e6) / 1e6;
    }

    static void have(JsonWriter json, Have have) {
        json.key("have").value(have.state().word());
        json.key("remark").value(have.remark().isEmpty() ? null : have.remark());
    }

    static void aids(JsonWriter json, List<TrayAid> aids) {
        json.key("aids").beginArray();
        for (TrayAid aid : aids) {
            json.beginObject().key("aid").value(aid.name());
            json.key("atOnce").value(aid.atOnce());
            json.key("steps").beginArray();
            for (int step : aid.steps()) {
                json.value(step);
            }
            json.endArray();
            have(json, aid.have());
            json.endObject();
        }
        json.endArray();
    }
}
