package putback.app.web;

import java.util.ArrayList;
import java.util.List;
import putback.plan.Reasons;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.sheet.Joint;

/**
 * A step as the page shows it.
 *
 * @param standing whether it changes how the car stands
 * @param facts tool, holding tool, place
 * @param why sentences back to what is renewed; none where the step explains itself
 */
public record StepView(
        int number,
        boolean apart,
        boolean standing,
        String text,
        String minutes,
        List<String> facts,
        List<String> cautions,
        List<String> why) {
    public StepView {
        facts = List.copyOf(facts);
        cautions = List.copyOf(cautions);
        why = List.copyOf(why);
    }

    static StepView of(Step step, Reasons reasons) {
        Joint joint = step.joint();
        List<String> why = joint != null && step.act() == Act.UNDO ? reasons.sentences(joint) : List.of();
        String minutes = step.minutes().plus(step.setup()).decimal().toPlainString();
        return new StepView(
                step.number(),
                step.phase() == Phase.APART,
                step.act() == Act.HEIGHT,
                step.text(),
                minutes.equals("0") ? "" : minutes + " min",
                facts(step),
                step.cautions(),
                why);
    }

    private static List<String> facts(Step step) {
        List<String> facts = new ArrayList<>();
        if (!step.tool().isEmpty() && !step.tool().equals("hand")) {
            facts.add(step.tool());
        }
        if (!step.hold().isEmpty()) {
            facts.add("hold with " + step.hold());
        }
        if (step.station() != null && step.joint() != null) {
            String side = step.side().word();
            facts.add(step.station().word() + (side.isEmpty() ? "" : ", " + side));
        }
        facts.addAll(step.stages());
        return facts;
    }
}
