package putback.store.sheets;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.ledger.Did;
import putback.ledger.PlanStep;
import putback.ledger.Promised;
import putback.quantity.Torque;
import putback.sheet.Height;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Items;
import putback.tightening.ReadingWindow;

/** Reads from a plan what it promised. Keys that are not needed here are left alone, since plans may have more. */
final class PromiseReader {
    /** Steps of a plan, and fasteners of a joint, at the very most. */
    private static final long MOST = 10_000;

    private final Faults faults;
    private final List<PlanStep> steps = new ArrayList<>();
    private final Set<String> joints = new LinkedHashSet<>();

    PromiseReader(Faults faults) {
        this.faults = faults;
    }

    /** Null, with the fault told, when it is no plan. */
    @Nullable
    Promised promised(Entries top) {
        if (!(top.get("steps") instanceof Items items)) {
            faults.add(top.place(), "this is no plan: it has no list of steps; write one with putback plan --json");
            return null;
        }
        for (Node step : items.items()) {
            if (step instanceof Entries entries) {
                step(new JsonFields(entries, faults));
            } else {
                faults.add(step.place(), "a step is a map, this is " + step.phrase());
            }
        }
        JsonFields fields = new JsonFields(top, faults);
        Set<String> hung = new LinkedHashSet<>(fields.texts("hung"));
        return Promised.of(steps, fields.texts("followUps"), hung, fields.map("names"));
    }

    private void step(JsonFields step) {
        String word = step.text("do");
        if (word == null) {
            faults.add(step.place(), "a step has no do, which it needs");
            return;
        }
        Did did = Did.of(word);
        if (did == null) {
            return;
        }
        String joint = step.text("joint");
        if (joint == null && did == Did.TIGHTEN) {
            faults.add(step.place(), "a step that tightens names no joint");
            return;
        }
        if (joint != null) {
            joints.add(joint);
        }
        Height height = step.height("height");
        Long number = step.count("n");
        Long count = step.count("count");
        String text = step.named("text");
        steps.add(new PlanStep(
                number == null ? steps.size() + 1 : (int) Math.min(number, MOST),
                did,
                joint,
                step.text("part"),
                step.texts("with"),
                step.text("aid"),
                step.text("followUp"),
                height == null ? Height.ANY : height,
                text == null ? "" : text,
                did == Did.TIGHTEN ? tight(step, height) : null,
                step.is("fasteners", "new"),
                count == null ? 1 : (int) Math.min(count, MOST),
                step.texts("brings"),
                did == Did.FOLLOW_UP ? errand(step) : null));
    }

    private static PlanStep.Tight tight(JsonFields step, @Nullable Height standing) {
        Double torque = step.number("torqueNm");
        List<Double> window = step.numbers("windowNm");
        boolean given = window.size() == 2;
        Height asked = step.height("tightenAt");
        Height height = asked == null ? standing : asked;
        Double least = null;
        Double most = null;
        if (torque != null) {
            Torque wanted = new Torque(torque);
            least = given
                    ? window.get(0)
                    : Double.valueOf(ReadingWindow.usualLeast(wanted).newtonMetres());
            most = given
                    ? window.get(1)
                    : Double.valueOf(ReadingWindow.usualMost(wanted).newtonMetres());
        }
        return new PlanStep.Tight(
                torque,
                step.number("angleDeg"),
                least,
                most,
                height == null ? Height.ANY : height,
                step.texts("tightenAfter"),
                Math.max(1, step.texts("stages").size()));
    }

    /** Where no opened joint says that it brings the follow-up, those among its reasons do. */
    private PlanStep.Errand errand(JsonFields step) {
        List<String> brought = new ArrayList<>();
        for (String why : step.texts("why")) {
            if (joints.contains(why)) {
                brought.add(why);
            }
        }
        Height height = step.height("doneAt");
        return new PlanStep.Errand(brought, height == null ? Height.ANY : height, step.texts("follows"));
    }
}
