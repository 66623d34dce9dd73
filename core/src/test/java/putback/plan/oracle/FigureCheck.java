package putback.plan.oracle;

import java.util.EnumSet;
import java.util.Set;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.sheet.Station;

/** Minutes that add up, and where and on which side each joint is worked. */
final class FigureCheck extends Check {
    private static final Set<Act> WORKED = EnumSet.of(Act.UNDO, Act.START, Act.TIGHTEN);

    private long minutes;
    private long setups;

    FigureCheck(Scene scene) {
        super(scene);
    }

    @Override
    void before(Step step) {
        minutes += step.minutes().millionths();
        setups += step.setup().millionths();
        complain(step.minutes().millionths() < 0 || step.setup().millionths() < 0, step, "it takes less than no time");
        if (step.joint() != null && WORKED.contains(step.act())) {
            Station station = step.joint().entry().station();
            complain(step.station() != station, step, "it is worked at " + station.word());
            complain(step.side() != step.joint().side(), step, "it is on another side");
            complain(step.why().isEmpty(), step, "nobody knows why");
        }
        complain(step.text().isBlank(), step, "it says nothing");
    }

    @Override
    void end() {
        complain(minutes != scene.plan.selection().work().millionths(), "the minutes of the steps are not the work");
        complain(setups != scene.plan.setup().millionths(), "the set-ups of the steps are not the set-up");
        boolean less = scene.plan.setup().compareTo(scene.plan.sequenceSetup()) < 0;
        complain(less, "the whole set-up is less than that of the way apart");
    }
}
