package putback.plan.oracle;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import putback.plan.order.Move;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.sheet.Joint;
import putback.sheet.Letting;

/**
 * Aids that hold what a joint lets go.
 *
 * <p>Readings. An aid is asked for before the joint is undone; a strap or a jack is not, when the part is off at that
 * moment or something holds it up already. On the way back the same aid has to be there when the joint is started. It
 * comes off when all opened joints that name it for this part are tight, or run down where they are tightened under
 * weight or after a follow-up, or started where they have no thread. The compressor of a spring that is renewed comes off the old one while
 * that is off the car; other aids may wait where they are. A part goes down when the last joint is open that lets it down,
 * or before a spring that stands on it leaves its seats, and then once more after the last. It is raised again before the
 * joint is closed that let it down, not before others that were opened later.
 */
final class AidCheck extends Check {
    private static final String SPRING_COMPRESSOR = "spring compressor";
    private static final Set<String> ONLY_WHERE_NEEDED = Set.of("strap", "jack");

    /**
     * @param joint index
     */
    private record Asked(int joint, Letting letting) {}

    /** One letting down, and the joints that had asked for it. */
    private record Stage(int part, Set<Asked> askers, boolean forSpring) {}

    private final Set<Asked> asked = new HashSet<>();
    private final List<Stage> stages = new ArrayList<>();
    private final StandingSprings springs;
    private final Set<Asked> toLetDown = new HashSet<>();

    AidCheck(Scene scene) {
        super(scene);
        springs = new StandingSprings(scene.rules);
    }

    @Override
    void before(Step step) {
        switch (step.act()) {
            case UNDO -> undo(step);
            case START -> start(step);
            case SUPPORT -> complain(step.aid() == null || step.part() == null, step, "it names no aid or no part");
            case LET_DOWN -> letDown(step);
            case JACK_UP -> jackUp(step);
            case RELEASE -> release(step);
            case RENEW -> renew(step);
            default -> {}
        }
    }

    private void undo(Step step) {
        toLetDown.forEach(late -> complain(true, step, partId(late.letting().part()) + " is not let down first"));
        int j = Scene.joint(step);
        for (Letting letting : scene.rules.joint(j).letsGo()) {
            int part = letting.part();
            boolean there = scene.isOn(letting.aid(), part);
            boolean off = scene.bonds().off(part);
            boolean spared = ONLY_WHERE_NEEDED.contains(letting.aid()) && (off || scene.isHeld(part));
            complain(!there && !spared, step, "no " + letting.aid() + " on " + partId(part));
            if (there) {
                asked.add(new Asked(j, letting));
            }
            if (there
                    && letting.letDown()
                    && !off
                    && mayGoDown(part)
                    && !isHeldUpByAnother(j, letting)
                    && !staysUp(j, part)) {
                toLetDown.add(new Asked(j, letting));
            }
        }
    }

    private boolean mayGoDown(int part) {
        return stages.stream().noneMatch(stage -> stage.part() == part && !stage.forSpring());
    }

    /** Whether a joint that lets the same part down comes next of what lets it down or takes a spring off it. */
    private boolean isHeldUpByAnother(int joint, Letting letting) {
        BitSet open = (BitSet) scene.open.clone();
        open.set(joint);
        Bonds bonds = scene.rules.bonds(open);
        for (int other : toCome(joint)) {
            if (springs.leaves(other, letting.part(), bonds)) {
                return false;
            }
            if (scene.rules.joint(other).letsGo().contains(letting)) {
                return true;
            }
        }
        return false;
    }

    /** Reading: a part is not let down where its springs stay in and nothing of it is opened that does not let it go. */
    private boolean staysUp(int joint, int part) {
        BitSet open = (BitSet) scene.open.clone();
        open.set(joint);
        List<Integer> opened = scene.plan.moves().stream()
                .filter(Move.Open.class::isInstance)
                .map(move -> ((Move.Open) move).joint())
                .toList();
        boolean otherwise = opened.stream()
                .map(scene.rules::joint)
                .filter(other -> other.joins().contains(part))
                .anyMatch(other -> other.letsGo().stream().noneMatch(letting -> letting.part() == part));
        return !otherwise && springs.allStay(part, scene.rules.bonds(open), opened);
    }

    private List<Integer> toCome(int joint) {
        return scene.plan.moves().stream()
                .filter(Move.Open.class::isInstance)
                .map(move -> ((Move.Open) move).joint())
                .filter(other -> other != joint && !scene.open.get(other))
                .toList();
    }

    private boolean isLetDownByMore(Letting letting) {
        return toCome(-1).stream()
                .anyMatch(other -> scene.rules.joint(other).letsGo().contains(letting));
    }

    private void letDown(Step step) {
        int part = Scene.part(step);
        boolean more =
                toLetDown.stream().anyMatch(due -> due.letting().part() == part && isLetDownByMore(due.letting()));
        complain(!toLetDown.removeIf(due -> due.letting().part() == part), step, "no joint lets it down now");
        Set<Asked> askers = new HashSet<>(asked);
        stages.forEach(stage -> askers.removeAll(stage.askers()));
        askers.removeIf(one -> one.letting().part() != part);
        stages.add(new Stage(part, askers, more));
    }

    /** It goes as high as the joint needs that is closed next of those for which it is down. */
    private void jackUp(Step step) {
        int part = Scene.part(step);
        List<Step> steps = scene.plan.steps();
        int next = steps.stream()
                .filter(later -> later.number() > step.number() && later.act() == Act.START)
                .mapToInt(Scene::joint)
                .findFirst()
                .orElse(-1);
        int from = stages.size();
        for (int i = stages.size() - 1; i >= 0; i--) {
            from = stages.get(i).part() == part && isFor(stages.get(i), next) ? i : from;
        }
        complain(from == stages.size(), step, "it was not let down");
        List<Stage> raised = stages.subList(from, stages.size());
        raised.removeIf(stage -> stage.part() == part);
    }

    private static boolean isFor(Stage stage, int joint) {
        return stage.askers().stream().anyMatch(one -> one.joint() == joint);
    }

    private void start(Step step) {
        int j = Scene.joint(step);
        for (Letting letting : scene.rules.joint(j).letsGo()) {
            if (asked.contains(new Asked(j, letting))) {
                boolean there = scene.isOn(letting.aid(), letting.part());
                complain(!there, step, "no " + letting.aid() + " on " + partId(letting.part()) + " any more");
                boolean down = letting.letDown()
                        && stages.stream().anyMatch(stage -> stage.askers().contains(new Asked(j, letting)));
                complain(down, step, partId(letting.part()) + " is still let down");
            }
        }
    }

    private void release(Step step) {
        Scene.Hold hold = step.part() == null ? null : scene.holdOf(step);
        complain(hold == null, step, "there is no such aid");
        if (hold == null || !hold.support() || changedWithThePart(step, hold)) {
            return;
        }
        for (Joint joint : scene.assembly().joints()) {
            for (Letting letting : joint.letsGo()) {
                if (asked.contains(new Asked(joint.index(), letting))
                        && letting.part() == hold.part()
                        && letting.aid().equals(hold.aid())) {
                    complain(!scene.isSecured(joint.index()), step, joint.id() + " asked for it and is not done");
                }
            }
        }
    }

    private void renew(Step step) {
        for (Scene.Hold hold : scene.holds) {
            boolean old = hold.support() && Scene.group(step).contains(hold.part());
            boolean ownForEach = hold.aid().equals(SPRING_COMPRESSOR);
            complain(old && ownForEach, step, hold.aid() + " is still on the old " + partId(hold.part()));
        }
    }

    private boolean changedWithThePart(Step step, Scene.Hold hold) {
        return step.phase() == Phase.APART && scene.bonds().off(hold.part());
    }

    @Override
    void end() {
        scene.holds.forEach(hold -> complain(true, hold.aid() + " is left on " + partId(hold.part())));
        stages.forEach(stage -> complain(true, partId(stage.part()) + " is still let down"));
        toLetDown.forEach(due -> complain(true, partId(due.letting().part()) + " is never let down"));
    }
}
