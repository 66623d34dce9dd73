package putback.app.web.carside;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.json.JsonWriter;
import putback.app.json.OwingJson;
import putback.app.json.PlanJson;
import putback.app.text.Headline;
import putback.app.web.planning.ResortsData;
import putback.app.web.planning.StepView;
import putback.app.web.planning.StepViews;
import putback.ledger.JointState;
import putback.ledger.PlanStep;
import putback.ledger.onward.Needs;
import putback.plan.steps.Phase;
import putback.plan.steps.StopCautions;
import putback.plan.tools.Tray;
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
     */
    static String of(CarsideJob here, @Nullable Tray tray, String now, List<Heard> heard) {
        CarsideJson writing = new CarsideJson(here, tray);
        writing.json.beginObject();
        writing.head(now);
        writing.json.key("plan").raw(PlanJson.of(here.plan(), tray));
        writing.cards();
        writing.standing();
        writing.json.key("owing").raw(OwingJson.of(here.onward().standing()));
        new ResortsData(here.plan()).write(writing.json);
        new BeyondJson(here).write(writing.json);
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
        json.key("cards").beginObject();
        for (Phase phase : Phase.values()) {
            String place = "";
            for (StepView view : views.of(phase)) {
                place = view.place().isEmpty() ? place : view.place();
                json.key(String.valueOf(view.number())).beginObject();
                json.key("where").value(view.height() ? "" : place);
                json.key("tools").value(view.tools());
                json.key("torque").value(view.torque());
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
