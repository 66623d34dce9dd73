package putback.app.web.carside;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.app.json.JsonWriter;
import putback.app.json.OwingJson;
import putback.app.json.PlanJson;
import putback.app.ladder.Figures;
import putback.app.text.Headline;
import putback.app.web.planning.ResortsData;
import putback.app.web.planning.StepView;
import putback.app.web.planning.StepViews;
import putback.ledger.JointState;
import putback.ledger.PlanStep;
import putback.ledger.onward.Needs;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.plan.steps.StopCautions;
import putback.plan.tools.Tray;
import putback.sheet.Fastener;
import putback.store.books.Heard;
import putback.store.books.Job;

/** What the page at the car needs to go on without a network, as one JSON object. */
final class CarsideJson {
    private static final int ROUGH = 60_000;

    private final CarsideJob here;
    private final @Nullable Tray tray;
    private final JsonWriter json = new JsonWriter(ROUGH);

    private CarsideJson(CarsideJob here, @Nullable Tray tray) {
        this.here = here;
        this.tray = tray;
    }

    /**
     * @param now by the garage's clock
     * @param invented whether that clock tells another time than there is, as the demonstration's does
     */
    static String of(CarsideJob here, @Nullable Tray tray, String now, boolean invented, List<Heard> heard) {
        CarsideJson writing = new CarsideJson(here, tray);
        writing.json.beginObject();
        writing.json.key("inventedTime").value(invented);
        writing.head(now);
        writing.json.key("plan").raw(PlanJson.of(here.plan(), tray));
        writing.cards();
        writing.standing();
        writing.json.key("owing").raw(OwingJson.of(here.onward().standing()));
        new ResortsData(here.plan(), here.seen()).write(writing.json);
        new BeyondJson(here).write(writing.json);
        new NearJson(here.plan()).write(writing.json);
        HangsJson.write(here.plan().assembly(), writing.json);
        writing.heard(heard);
        return writing.json.endObject().toString();
    }

    private void head(String now) {
        Job job = here.job();
        json.key("now").value(now);
        json.key("last").value(here.last());
        json.key("job").beginObject();
        json.key("id").value(job.id()).key("number").value(job.number());
        json.key("car").value(here.carName());
        json.key("title").value(here.plan().assembly().sheet().title());
        json.key("complaint").value(job.arrival().complaint());
        json.key("scope")
                .value(job.scope().sheet() + " " + job.scope().renew() + " "
                        + job.scope().side());
        json.key("renewed").value(Headline.renewed(here.plan()));
        json.key("changedBy").value(here.scoped() == null ? "" : here.scoped().by());
        json.key("changedAt").value(here.scoped() == null ? "" : here.scoped().at());
        json.endObject();
    }

    /** Each step as the plan's page words it, and what has to be done before it. */
    private void cards() {
        Map<Integer, List<Integer>> needs = Needs.of(here.plan());
        StepViews views = new StepViews(here.plan(), tray);
        Set<Integer> unknown = unknown(here.plan());
        json.key("cards").beginObject();
        for (Phase phase : Phase.values()) {
            String place = "";
            for (StepView view : views.of(phase)) {
                place = view.place().isEmpty() ? place : view.place();
                json.key(String.valueOf(view.number())).beginObject();
                json.key("where").value(view.height() ? "" : place);
                json.key("tools").value(view.tools());
                json.key("torque").value(view.torque());
                json.key("unknown").value(unknown.contains(view.number()));
                json.key("source").value(view.source());
                json.key("wrench").strings(view.wrench());
                json.key("why").strings(view.why());
                json.key("stops").beginArray();
                view.cautions().forEach(caution -> json.value(StopCautions.stops(caution)));
                json.endArray();
                json.key("needs").beginArray();
                needs.getOrDefault(view.number(), List.of()).forEach(json::value);
                json.endArray().endObject();
            }
        }
        json.endObject();
    }

    /** Numbers of the steps that tighten something of which nobody has said how tight. */
    private static Set<Integer> unknown(Plan plan) {
        Set<Integer> unknown = new HashSet<>();
        for (Step step : plan.steps()) {
            Fastener fastener = step.fastener();
            if (step.act() == Act.TIGHTEN && fastener != null && Figures.unknown(fastener)) {
                unknown.add(step.number());
            }
        }
        return unknown;
    }

    private void standing() {
        json.key("standing").beginObject();
        json.key("toDo").beginArray();
        for (PlanStep step : here.onward().toDo()) {
            json.value(step.number());
        }
        json.endArray().key("joints").beginObject();
        for (Map.Entry<String, JointState> joint :
                here.onward().standing().joints().entrySet()) {
            json.key(joint.getKey()).value(joint.getValue().word());
        }
        json.endObject().endObject();
    }

    private void heard(List<Heard> heard) {
        json.key("heard").beginArray();
        for (Heard one : heard) {
            json.beginObject().key("device").value(one.device()).key("by").value(one.by());
            json.key("at").value(one.at()).key("unsent").value(one.unsent());
            json.key("aheadSeconds").value((int) one.aheadSeconds()).endObject();
        }
        json.endArray();
    }
}
