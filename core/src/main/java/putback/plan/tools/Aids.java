package putback.plan.tools;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.sheet.Height;
import putback.tightening.toolbox.Have;
import putback.tightening.toolbox.Toolbox;

/** Counts the aids of a plan: when they go on, and how many are on at one time. */
final class Aids {
    private static final String STANDS = "stands";
    private static final String LIFT = "lift";

    private static final class Count {
        private final List<Integer> steps = new ArrayList<>();
        private int on;
        private int most;
    }

    private final Map<String, Count> counts = new LinkedHashMap<>();

    private Aids() {}

    static List<TrayAid> of(List<Step> steps, Toolbox toolbox) {
        Aids aids = new Aids();
        for (Step step : steps) {
            aids.count(step);
        }
        List<TrayAid> tray = new ArrayList<>();
        for (Map.Entry<String, Count> entry : aids.counts.entrySet()) {
            Count count = entry.getValue();
            tray.add(new TrayAid(entry.getKey(), count.most, count.steps, have(toolbox, entry.getKey(), count.most)));
        }
        return tray;
    }

    private void count(Step step) {
        String aid = step.aid();
        if (step.act() == Act.HEIGHT && step.height() != Height.ON_WHEELS) {
            Count stands = counts.computeIfAbsent(STANDS, name -> new Count());
            stands.most = 1;
            stands.steps.add(step.number());
        } else if (aid != null && (step.act() == Act.SUPPORT || step.act() == Act.ASIDE)) {
            Count count = counts.computeIfAbsent(aid, name -> new Count());
            count.steps.add(step.number());
            count.on++;
            count.most = Math.max(count.most, count.on);
        } else if (aid != null && step.act() == Act.RELEASE) {
            counts.computeIfAbsent(aid, name -> new Count()).on--;
        }
    }

    private static Have have(Toolbox toolbox, String name, int atOnce) {
        Have have = Have.aid(toolbox, name, atOnce);
        boolean byLift = name.equals(STANDS) && have.state() == Have.State.MISSING && toolbox.aid(LIFT) != null;
        return byLift ? new Have(Have.State.INSTEAD, "the " + LIFT) : have;
    }
}
