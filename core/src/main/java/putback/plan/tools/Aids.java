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
public final class Aids {
    private static final String STANDS = "stands";
    private static final String LIFT = "lift";

    private static final class Count {
        private final List<Integer> steps = new ArrayList<>();
        private int on;
        private int most;
    }

    private final Map<String, Count> counts = new LinkedHashMap<>();

    private Aids() {}

    /** In the order of first use. */
    public static List<AidNeed> of(List<Step> steps) {
        Aids aids = new Aids();
        for (Step step : steps) {
            aids.count(step);
        }
        List<AidNeed> needs = new ArrayList<>();
        for (Map.Entry<String, Count> entry : aids.counts.entrySet()) {
            needs.add(new AidNeed(entry.getKey(), entry.getValue().most, entry.getValue().steps));
        }
        return needs;
    }

    static List<TrayAid> of(List<Step> steps, Toolbox toolbox) {
        List<TrayAid> tray = new ArrayList<>();
        for (AidNeed need : of(steps)) {
            Have have = have(toolbox, need.name(), need.atOnce());
            tray.add(new TrayAid(need.name(), need.atOnce(), need.steps(), have));
        }
        return tray;
    }

    private Count counted(String name) {
        Count count = counts.get(name);
        if (count == null) {
            count = new Count();
            counts.put(name, count);
        }
        return count;
    }

    private void count(Step step) {
        String aid = step.aid();
        if (step.act() == Act.HEIGHT && step.height() != Height.ON_WHEELS) {
            Count stands = counted(STANDS);
            stands.most = 1;
            stands.steps.add(step.number());
        } else if (aid != null && (step.act() == Act.SUPPORT || step.act() == Act.ASIDE)) {
            Count count = counted(aid);
            count.steps.add(step.number());
            count.on++;
            count.most = Math.max(count.most, count.on);
        } else if (aid != null && step.act() == Act.RELEASE) {
            counted(aid).on--;
        }
    }

    private static Have have(Toolbox toolbox, String name, int atOnce) {
        Have have = Have.aid(toolbox, name, atOnce);
        boolean byLift = name.equals(STANDS) && have.state() == Have.State.MISSING && toolbox.aid(LIFT) != null;
        return byLift ? new Have(Have.State.INSTEAD, "the " + LIFT) : have;
    }
}
