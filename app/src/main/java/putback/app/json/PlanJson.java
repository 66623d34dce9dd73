package putback.app.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.plan.ToolUse;
import putback.plan.selection.Selection;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.plan.tools.Limits;
import putback.plan.tools.Tray;
import putback.sheet.Assembly;
import putback.sheet.Fastener;
import putback.sheet.FollowUp;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Station;
import putback.sheet.Tightening;

/** A plan as one JSON object. */
public final class PlanJson {
    private static final int HEAD = 2000;
    private static final int STEP = 700;

    private final Plan plan;
    private final Assembly assembly;
    private final JsonWriter json;
    private final @Nullable Tray tray;

    private PlanJson(Plan plan, @Nullable Tray tray) {
        this.tray = tray;
        this.plan = plan;
        this.assembly = plan.assembly();
        this.json = new JsonWriter(HEAD + STEP * plan.steps().size());
    }

    /**
     * The object, without a line end.
     *
     * @param tray what the toolbox has for it; null where no toolbox is known
     */
    public static String of(Plan plan, @Nullable Tray tray) {
        return new PlanJson(plan, tray).write();
    }

    private String write() {
        Selection selection = plan.selection();
        json.beginObject();
        json.key("sheet").value(assembly.sheet().id());
        json.key("renew").strings(plan.wanted().ids());
        json.key("open").beginArray();
        for (int joint : selection.open()) {
            json.value(assembly.joints().get(joint).id());
        }
        json.endArray();
        parts("off", selection.off());
        parts("hung", selection.hung());
        parts("aside", selection.aside());
        json.key("followUps").beginArray();
        for (FollowUp followUp : selection.followUps()) {
            json.value(followUp.id());
        }
        json.endArray();
        figures(selection);
        json.key("steps").beginArray();
        for (Step step : plan.steps()) {
            step(step);
        }
        json.endArray();
        tools();
        needs();
        names();
        json.key("advice").strings(plan.advice());
        json.key("warnings").strings(plan.warnings());
        return json.endObject().toString();
    }

    private void figures(Selection selection) {
        json.key("minutes").beginObject();
        json.key("work").value(selection.work().decimal());
        json.key("setup").value(plan.setup().decimal());
        json.key("total").value(plan.total().decimal());
        json.endObject();
        json.key("objective").value(plan.objective().decimal());
        json.key("proven").value(plan.proof().proven());
        json.key("bound").value(plan.proof().bound().decimal());
        json.key("sequence").beginObject();
        json.key("setup").value(plan.sequenceSetup().decimal());
        json.endObject();
    }

    private void parts(String key, List<Integer> indices) {
        json.key(key).beginArray();
        for (int part : indices) {
            json.value(assembly.parts().get(part).id());
        }
        json.endArray();
    }

    private void step(Step step) {
        @Nullable Station station = step.station();
        @Nullable FollowUp followUp = step.followUp();
        json.beginObject();
        json.key("n").value(step.number());
        json.key("do").value(step.act().word());
        json.key("phase").value(step.phase().name().toLowerCase(Locale.ROOT));
        json.key("joint").value(step.joint() == null ? null : step.joint().id());
        json.key("part").value(step.part() == null ? null : step.part().id());
        json.key("with").strings(ids(step.with()));
        json.key("aid").value(step.aid());
        json.key("followUp").value(followUp == null ? null : followUp.id());
        json.key("side").value(orNull(step.side().word()));
        json.key("station").value(station == null ? null : station.word());
        json.key("height").value(step.height().word());
        json.key("tool").value(orNull(step.tool()));
        json.key("hold").value(orNull(step.hold()));
        json.key("minutes").value(step.minutes().decimal());
        json.key("setup").value(step.setup().decimal());
        tightening(step.act() == Act.TIGHTEN ? step.fastener() : null);
        hardware(step);
        TrayJson.step(
                json, Limits.of(step), tray == null ? null : tray.wrenches().get(step.number()));
        json.key("stages").strings(step.stages());
        afterwards(step);
        json.key("why").strings(step.why());
        json.key("cautions").strings(step.cautions());
        json.key("text").value(step.text());
        json.endObject();
    }

    private void hardware(Step step) {
        Fastener fastener = step.act() == Act.TIGHTEN || step.act() == Act.START ? step.fastener() : null;
        json.key("fasteners").value(fastener == null ? null : fastener.singleUse() ? "new" : "re-used");
    }

    /** What the ledger asks for later: what opening brings, what comes before what. */
    private void afterwards(Step step) {
        Joint joint = step.joint();
        FollowUp followUp = step.followUp();
        if (joint != null && step.act() == Act.UNDO) {
            json.key("count").value(joint.fastener().count());
            json.key("brings").strings(inThisTrip(joint.entry().brings()));
        }
        if (joint != null && step.act() == Act.TIGHTEN) {
            json.key("tightenAfter").strings(inThisTrip(joint.entry().timing().tightenAfter()));
        }
        if (followUp != null) {
            json.key("doneAt").value(followUp.height().word());
            json.key("follows").strings(inThisTrip(followUp.follows()));
        }
    }

    private List<String> inThisTrip(List<String> ids) {
        List<String> kept = new ArrayList<>(ids.size());
        for (String id : ids) {
            for (FollowUp followUp : plan.selection().followUps()) {
                if (id.equals(followUp.id())) {
                    kept.add(id);
                }
            }
        }
        return kept;
    }

    private void names() {
        json.key("names").beginObject();
        for (Joint joint : assembly.joints()) {
            json.key(joint.id()).value(joint.name());
        }
        for (Part part : assembly.parts()) {
            json.key(part.id()).value(part.name());
        }
        for (FollowUp followUp : assembly.sheet().followUps()) {
            json.key(followUp.id()).value(followUp.name());
        }
        json.endObject();
    }

    private void tightening(@Nullable Fastener fastener) {
        Double torque = null;
        Double angle = null;
        if (fastener != null && fastener.tightening() instanceof Tightening.ToTorque one) {
            torque = one.torque().newtonMetres();
        } else if (fastener != null && fastener.tightening() instanceof Tightening.TorqueThenAngle both) {
            torque = both.torque().newtonMetres();
            angle = both.angle().degrees();
        }
        json.key("torqueNm").number(torque);
        json.key("angleDeg").number(angle);
        json.key("torqueSource").value(fastener == null || torque == null ? null : fastener.source());
        json.key("tightenAt").value(fastener == null ? null : fastener.tighten().word());
        json.key("condition")
                .value(
                        fastener == null || torque == null
                                ? null
                                : fastener.condition().word());
    }

    private void tools() {
        json.key("tools").beginArray();
        for (int i = 0; i < plan.tools().size(); i++) {
            ToolUse tool = plan.tools().get(i);
            json.beginObject().key("tool").value(tool.tool()).key("steps").beginArray();
            for (int step : tool.steps()) {
                json.value(step);
            }
            json.endArray();
            if (tray != null) {
                TrayJson.have(json, tray.tools().get(i).have());
            }
            json.endObject();
        }
        json.endArray();
        if (tray != null) {
            TrayJson.aids(json, tray.aids());
        }
    }

    private void needs() {
        json.key("parts").beginArray();
        for (PartNeed need : plan.parts()) {
            json.beginObject();
            json.key("part").value(need.id());
            json.key("name").value(need.name());
            json.key("count").value(need.count());
            json.key("price").value(need.price() == null ? null : need.price().toPlainString());
            json.key("reason").value(need.reason());
            json.endObject();
        }
        json.endArray();
    }

    private static List<String> ids(List<Part> parts) {
        List<String> ids = new ArrayList<>(parts.size());
        for (Part part : parts) {
            ids.add(part.id());
        }
        return ids;
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
