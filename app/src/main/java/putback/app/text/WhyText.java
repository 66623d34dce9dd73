package putback.app.text;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.text.Page.Ink;
import putback.plan.Plan;
import putback.plan.Reasons;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.sheet.Joint;

/** Why a step is there: from it back to what is renewed, one sentence a line. */
public final class WhyText {
    private WhyText() {}

    /**
     * @param number of a step of this plan
     */
    public static String of(Plan plan, int number, Screen screen) {
        Step step = plan.steps().get(number - 1);
        Page page = new Page(screen);
        page.words(Ink.STRONG, "Step " + number + ": ", step.text());
        Joint joint = joint(plan, step);
        if (joint == null) {
            page.words(Ink.PLAIN, "  ", without(step));
            return page.toString();
        }
        List<String> sentences = Reasons.of(plan).sentences(joint);
        for (String sentence : sentences) {
            page.words(Ink.PLAIN, "  - ", sentence);
        }
        return page.toString();
    }

    /** The fixing whose reason is that of the step: its own, or the one that frees its part or brings its follow-up. */
    private static @Nullable Joint joint(Plan plan, Step step) {
        if (step.joint() != null) {
            return step.joint();
        }
        for (String id : step.why()) {
            for (Joint joint : plan.assembly().joints()) {
                if (joint.id().equals(id)) {
                    return joint;
                }
            }
        }
        return null;
    }

    private static String without(Step step) {
        if (step.act() == Act.CHECK && step.phase() == Phase.APART) {
            return "A later step sets what is measured here, and then it can no longer be seen.";
        }
        return step.act() == Act.HEIGHT
                ? "The steps that follow are done with the car standing like this."
                : step.act() == Act.CHECK
                        ? "It closes the job: nothing that was touched may be left as it was touched."
                        : "It belongs to what is renewed: " + Headline.part(step) + ".";
    }
}
