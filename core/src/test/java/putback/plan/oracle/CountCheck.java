package putback.plan.oracle;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.sheet.Joint;

/** That each step follows the one before, and that each opened joint goes through all it has to go through, in order. */
final class CountCheck extends Check {
    private static final Set<Act> OF_A_JOINT =
            EnumSet.of(Act.UNDO, Act.START, Act.RUN_DOWN, Act.TIGHTEN, Act.BREAK_LOOSE, Act.SECOND_LOOK);

    private final Map<Integer, Map<Act, Integer>> counts = new HashMap<>();
    private int number;
    private Phase phase = Phase.APART;

    CountCheck(Scene scene) {
        super(scene);
    }

    @Override
    void before(Step step) {
        number++;
        complain(step.number() != number, step, "its number should be " + number);
        complain(step.phase().compareTo(phase) < 0, step, "it is apart after together");
        phase = step.phase();
        if (OF_A_JOINT.contains(step.act())) {
            int j = Scene.joint(step);
            complain(!scene.plan.selection().open().contains(j), step, "the plan does not open this joint");
            counts.computeIfAbsent(j, k -> new EnumMap<>(Act.class)).merge(step.act(), 1, Integer::sum);
            checkOrder(step, scene.fixings[j]);
        }
    }

    private void checkOrder(Step step, Scene.Fixing fixing) {
        boolean threaded = scene.rules.joint(Scene.joint(step)).entry().kind().threaded();
        List<Scene.Fixing> allowed =
                switch (step.act()) {
                    case UNDO, BREAK_LOOSE -> List.of(Scene.Fixing.SHUT);
                    case START -> List.of(Scene.Fixing.OPEN);
                    case RUN_DOWN -> List.of(Scene.Fixing.STARTED);
                    case TIGHTEN -> List.of(Scene.Fixing.RUN_DOWN);
                    default -> List.of(threaded ? Scene.Fixing.TIGHT : Scene.Fixing.STARTED);
                };
        complain(!allowed.contains(fixing), step, "the joint is " + fixing + " where it should be " + allowed);
    }

    @Override
    void end() {
        for (int j : scene.plan.selection().open()) {
            Joint joint = scene.rules.joint(j);
            boolean threaded = joint.entry().kind().threaded();
            expect(joint, Act.UNDO, 1);
            expect(joint, Act.START, 1);
            expect(joint, Act.TIGHTEN, threaded ? 1 : 0);
            expect(joint, Act.BREAK_LOOSE, isLoosenedFirst(joint) ? 1 : 0);
            expect(joint, Act.SECOND_LOOK, joint.fastener().critical() ? 1 : 0);
        }
    }

    private boolean isLoosenedFirst(Joint joint) {
        return joint.entry().breakLooseOnWheels()
                || joint.loosenBefore().stream().anyMatch(scene.plan.selection().open()::contains);
    }

    private void expect(Joint joint, Act act, int times) {
        int found = counts.getOrDefault(joint.index(), Map.of()).getOrDefault(act, 0);
        complain(found != times, joint.id() + " has " + found + " times " + act.word() + " instead of " + times);
    }
}
