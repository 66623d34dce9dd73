package putback.app.web;

import java.util.List;
import java.util.stream.Collectors;
import putback.app.ladder.LadderSize;
import putback.app.ladder.LadderSvg;
import putback.app.text.Headline;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.plan.Reasons;
import putback.plan.ToolUse;

/** A plan as the page shows it. */
public record PlanView(
        Question question,
        String title,
        String renewed,
        String work,
        String setup,
        String total,
        String proof,
        String wide,
        String narrow,
        List<StepView> steps,
        List<ToolUse> tools,
        List<PartNeed> parts,
        List<String> advice,
        List<String> warnings) {

    static PlanView of(Question question, Plan plan) {
        Reasons reasons = Reasons.of(plan);
        return new PlanView(
                question,
                plan.assembly().sheet().title(),
                Headline.renewed(plan),
                plan.selection().work().toString(),
                plan.setup().toString(),
                plan.total().toString(),
                proof(plan),
                LadderSvg.draw(plan, LadderSize.WIDE),
                LadderSvg.draw(plan, LadderSize.NARROW),
                plan.steps().stream().map(step -> StepView.of(step, reasons)).toList(),
                plan.tools(),
                plan.parts(),
                plan.advice(),
                plan.warnings());
    }

    private static String proof(Plan plan) {
        return plan.proof().proven()
                ? "No cheaper way exists: proven."
                : "The best way found; none takes less than "
                        + plan.proof().bound().decimal().toPlainString() + " of its "
                        + plan.objective().toString() + ".";
    }

    /** The numbers of the steps that need a tool. */
    public static String steps(ToolUse use) {
        return use.steps().stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** The steps of one way. */
    public List<StepView> steps(boolean apart) {
        return steps.stream().filter(step -> step.apart() == apart).toList();
    }
}
