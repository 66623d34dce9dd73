package putback.app.json;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Length;
import putback.tightening.toolbox.Kept;
import putback.tightening.toolbox.Owned;
import putback.tightening.toolbox.Toolbox;
import putback.tightening.toolbox.TorqueWrench;

/** A toolbox as one JSON object. */
public final class ToolboxJson {
    private static final int ROUGH = 4000;

    private ToolboxJson() {}

    /**
     * The object, without a line end.
     *
     * @param on the day by which calibration is judged
     */
    public static String of(Toolbox toolbox, LocalDate on) {
        JsonWriter json = new JsonWriter(ROUGH).beginObject();
        json.key("toolbox").value(toolbox.id());
        json.key("title").value(toolbox.title());
        json.key("on").value(on.toString());
        json.key("tools").beginArray();
        for (Owned owned : toolbox.tools()) {
            json.beginObject().key("tool").value(owned.tool().text());
            json.key("drive").value(text(owned.drive()));
            json.key("reachMm")
                    .number(owned.reach() == null ? null : owned.reach().millimetres());
            json.endObject();
        }
        json.endArray();
        kept(json, "other", toolbox.kept());
        kept(json, "aids", toolbox.aids());
        json.key("wrenches").beginArray();
        for (TorqueWrench wrench : toolbox.wrenches()) {
            wrench(json, wrench, wrench.upkeep().due(on, toolbox.interval()));
        }
        return json.endArray().endObject().toString();
    }

    private static void kept(JsonWriter json, String key, List<Kept> all) {
        json.key(key).beginArray();
        for (Kept one : all) {
            json.beginObject().key("name").value(one.name()).key("count").value(one.count());
            json.key("remark").value(one.remark().isEmpty() ? null : one.remark());
            json.endObject();
        }
        json.endArray();
    }

    private static void wrench(JsonWriter json, TorqueWrench wrench, List<String> due) {
        json.beginObject().key("id").value(wrench.id());
        TrayJson.span(json, "rangeNm", wrench.low(), wrench.high());
        json.key("stepNm").number(wrench.step() == null ? null : wrench.step().newtonMetres());
        json.key("deviation").number(wrench.deviation());
        json.key("deviationStated").value(wrench.deviationStated());
        json.key("drive").value(text(wrench.drive()));
        json.key("due").strings(due);
        json.endObject();
    }

    private static @Nullable String text(@Nullable Length drive) {
        return drive == null ? null : drive.acrossFlats();
    }
}
