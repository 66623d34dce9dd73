package putback.plan.oracle;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import putback.plan.selection.Target;
import putback.plan.steps.Step;
import putback.sheet.FollowUp;
import putback.sheet.Joint;

/**
 * Marks before opening, cleaning before closing, preparing before offering up, and follow-ups when all is closed.
 *
 * <p>Reading: a unit comes prepared but for what it asks for itself.
 */
final class WordCheck extends Check {
    private final BitSet marked = new BitSet();
    private final BitSet cleaned = new BitSet();
    private final BitSet prepared = new BitSet();
    private final BitSet inNewUnit;
    private final List<String> followedUp = new ArrayList<>();

    WordCheck(Scene scene) {
        super(scene);
        this.inNewUnit = new Duty(scene.rules, scene.plan.wanted()).covered;
    }

    @Override
    void before(Step step) {
        switch (step.act()) {
            case MARK -> marked.set(Scene.joint(step));
            case CLEAN -> cleaned.set(Scene.joint(step));
            case PREPARE -> prepare(step);
            case UNDO -> {
                boolean due = !joint(step).entry().wording().marks().isEmpty();
                complain(due && !marked.get(Scene.joint(step)), step, "it is not marked");
            }
            case START -> {
                boolean due = !joint(step).entry().wording().beforeClosing().isEmpty();
                complain(due && !cleaned.get(Scene.joint(step)), step, "what is done before closing is not done");
            }
            case TIGHTEN -> tighten(step);
            case OFFER_UP -> offerUp(step);
            case FOLLOW_UP -> followUp(step);
            default -> {}
        }
    }

    private static Joint joint(Step step) {
        return Objects.requireNonNull(step.joint());
    }

    private void tighten(Step step) {
        for (FollowUp followUp : scene.plan.selection().followUps()) {
            boolean waits = joint(step).entry().timing().tightenAfter().contains(followUp.id());
            complain(waits && !followedUp.contains(followUp.id()), step, followUp.id() + " comes before it");
        }
    }

    private void prepare(Step step) {
        if (step.part() != null) {
            Scene.group(step).forEach(prepared::set);
        }
    }

    private void offerUp(Step step) {
        for (int p : Scene.group(step)) {
            boolean asks = !scene.rules.part(p).entry().prepare().isEmpty();
            boolean due = asks && scene.renewed.get(p) && !inNewUnit.get(p);
            complain(due && !prepared.get(p), step, "the new " + partId(p) + " is not prepared");
        }
        for (Target target : scene.plan.wanted().targets()) {
            if (target instanceof Target.OfUnit ofUnit
                    && !ofUnit.unit().entry().prepare().isEmpty()) {
                List<Integer> parts = ofUnit.unit().parts();
                boolean goesOn = parts.stream().anyMatch(Scene.group(step)::contains);
                complain(goesOn && parts.stream().noneMatch(prepared::get), step, target.id() + " is not prepared");
            }
        }
    }

    private void followUp(Step step) {
        FollowUp followUp = Objects.requireNonNull(step.followUp());
        complain(!scene.plan.selection().followUps().contains(followUp), step, "nothing brings it");
        complain(followedUp.contains(followUp.id()), step, "it is done already");
        for (FollowUp other : scene.plan.selection().followUps()) {
            boolean late = followUp.follows().contains(other.id()) && !followedUp.contains(other.id());
            complain(late, step, other.id() + " comes before it");
        }
        for (Joint joint : scene.assembly().joints()) {
            boolean brings = joint.entry().brings().contains(followUp.id());
            complain(brings && scene.open.get(joint.index()), step, joint.id() + " brings it and is still open");
        }
        followedUp.add(followUp.id());
    }

    @Override
    void end() {
        for (FollowUp followUp : scene.plan.selection().followUps()) {
            complain(!followedUp.contains(followUp.id()), followUp.id() + " is never done");
        }
    }
}
