package putback.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.plan.tools.Limits;
import putback.sheet.Assembly;
import putback.sheet.Fastener;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Tightening;

/** Turns a plan into what it promises. */
public final class PlanPromise {
    private final Set<String> followUps = new LinkedHashSet<>();

    private PlanPromise(Plan plan) {
        for (FollowUp followUp : plan.selection().followUps()) {
            followUps.add(followUp.id());
        }
    }

    /** What the ledger holds a job against. */
    public static Promised of(Plan plan) {
        PlanPromise promise = new PlanPromise(plan);
        List<PlanStep> steps = new ArrayList<>();
        for (Step step : plan.steps()) {
            steps.add(promise.step(step));
        }
        Set<String> hung = new LinkedHashSet<>();
        for (int part : plan.selection().hung()) {
            hung.add(plan.assembly().parts().get(part).id());
        }
        return Promised.of(steps, List.copyOf(promise.followUps), hung, names(plan.assembly()));
    }

    /** What joints, parts and follow-ups are called, by id. */
    public static Map<String, String> names(Assembly assembly) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Joint joint : assembly.joints()) {
            names.put(joint.id(), joint.name());
        }
        for (Part part : assembly.parts()) {
            names.put(part.id(), part.name());
        }
        for (FollowUp followUp : assembly.sheet().followUps()) {
            names.putIfAbsent(followUp.id(), followUp.name());
        }
        return names;
    }

    private PlanStep step(Step step) {
        Joint joint = step.joint();
        Part part = step.part();
        FollowUp followUp = step.followUp();
        Fastener fastener = step.fastener();
        boolean closes = step.act() == Act.START || step.act() == Act.TIGHTEN;
        List<String> with = new ArrayList<>();
        for (Part other : step.with()) {
            with.add(other.id());
        }
        return new PlanStep(
                step.number(),
                Did.valueOf(step.act().name()),
                joint == null ? null : joint.id(),
                part == null ? null : part.id(),
                with,
                step.aid(),
                followUp == null ? null : followUp.id(),
                step.height(),
                step.text(),
                step.act() == Act.TIGHTEN ? tight(step) : null,
                closes && fastener != null && fastener.singleUse(),
                joint == null ? 1 : joint.fastener().count(),
                step.act() == Act.UNDO && joint != null ? brings(joint) : List.of(),
                followUp == null ? null : errand(followUp));
    }

    private PlanStep.Tight tight(Step step) {
        Joint joint = step.joint();
        Fastener fastener = step.fastener();
        Limits limits = Limits.of(step);
        Tightening asked = fastener == null ? Tightening.UNKNOWN : fastener.tightening();
        return new PlanStep.Tight(
                limits == null ? null : limits.torque().newtonMetres(),
                asked instanceof Tightening.TorqueThenAngle both
                        ? Double.valueOf(both.angle().degrees())
                        : null,
                limits == null ? null : limits.least().newtonMetres(),
                limits == null ? null : limits.most().newtonMetres(),
                fastener == null ? Height.ANY : fastener.tighten(),
                joint == null ? List.of() : tightenAfter(joint, followUps),
                Math.max(1, step.stages().size()));
    }

    /** Those follow-ups of a trip before which the joint is only run down. */
    private static List<String> tightenAfter(Joint joint, Set<String> trip) {
        return kept(joint.entry().timing().tightenAfter(), trip);
    }

    /** Those follow-ups that opening the joint brings. */
    private List<String> brings(Joint joint) {
        return kept(joint.entry().brings(), followUps);
    }

    private static List<String> kept(List<String> ids, Set<String> trip) {
        List<String> kept = new ArrayList<>();
        for (String id : ids) {
            if (trip.contains(id)) {
                kept.add(id);
            }
        }
        return kept;
    }

    private PlanStep.Errand errand(FollowUp followUp) {
        return new PlanStep.Errand(List.of(), followUp.height(), kept(followUp.follows(), followUps));
    }
}
