package putback.plan.oracle;

import java.util.ArrayList;
import java.util.List;
import putback.plan.steps.Step;

/** One kind of rule, looked at step by step. */
abstract class Check {
    final Scene scene;
    private final List<String> complaints = new ArrayList<>();

    Check(Scene scene) {
        this.scene = scene;
    }

    /** Called before the step changes the scene. */
    void before(Step step) {}

    /** Called when all steps are done. */
    void end() {}

    final void complain(boolean wrong, String sentence) {
        if (wrong) {
            complaints.add(sentence);
        }
    }

    final void complain(boolean wrong, Step step, String sentence) {
        complain(wrong, "step " + step.number() + " (" + said(step) + "): " + sentence);
    }

    final List<String> complaints() {
        return complaints;
    }

    private static String said(Step step) {
        String joint = step.joint() == null ? "" : " " + step.joint().id();
        String part = step.part() == null ? "" : " " + step.part().id();
        String aid = step.aid() == null ? "" : " " + step.aid();
        return step.act().word() + joint + part + aid + ", " + step.height().word();
    }

    final String partId(int part) {
        return scene.rules.part(part).id();
    }

    final String jointId(int joint) {
        return scene.rules.joint(joint).id();
    }
}
