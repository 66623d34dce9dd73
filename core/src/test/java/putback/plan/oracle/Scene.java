package putback.plan.oracle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import putback.plan.Plan;
import putback.plan.order.Move;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.sheet.Aside;
import putback.sheet.Assembly;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Part;

/** How the car stands between two steps: what is open, aside, tied up, let down, and how far each joint has come. */
final class Scene {
    enum Fixing {
        SHUT,
        OPEN,
        STARTED,
        RUN_DOWN,
        TIGHT
    }

    /**
     * An aid on the car.
     *
     * @param parts what it keeps, in one piece
     * @param support whether put on before a letting go
     */
    record Hold(String aid, int part, TreeSet<Integer> parts, boolean support) {}

    final Plan plan;
    final Rules rules;
    final BitSet open = new BitSet();
    final BitSet aside = new BitSet();
    final List<Hold> holds = new ArrayList<>();
    final BitSet renewed = new BitSet();
    final Fixing[] fixings;
    /** How many moves of the plan have been made. */
    private int made;

    Height height = Height.ON_WHEELS;

    private @Nullable Bonds bonds;

    Scene(Plan plan) {
        this.plan = plan;
        this.rules = new Rules(plan.assembly());
        this.fixings = new Fixing[plan.assembly().joints().size()];
        Arrays.fill(fixings, Fixing.SHUT);
    }

    Assembly assembly() {
        return plan.assembly();
    }

    Bonds bonds() {
        Bonds known = bonds;
        if (known == null) {
            known = rules.bonds((BitSet) open.clone());
            bonds = known;
        }
        return known;
    }

    static int joint(Step step) {
        return Objects.requireNonNull(step.joint()).index();
    }

    static int part(Step step) {
        return Objects.requireNonNull(step.part()).index();
    }

    /** The part of a step and what goes with it. */
    static TreeSet<Integer> group(Step step) {
        TreeSet<Integer> group = new TreeSet<>();
        group.add(part(step));
        step.with().stream().map(Part::index).forEach(group::add);
        return group;
    }

    /** Whether the step moves a part aside as its sheet says, and does not merely tie it up. */
    boolean movesAside(Step step) {
        return step.act() == Act.ASIDE
                && step.phase() == Phase.APART
                && made < plan.moves().size()
                && plan.moves().get(made).equals(new Move.MoveAside(part(step)))
                && !aside.get(part(step))
                && (step.aid() == null || step.aid().equals(asideAid(part(step))))
                && rules.canGoAside(part(step), open);
    }

    /** With what the sheet keeps a part aside; what ties up a part that hangs first is another step. */
    private @Nullable String asideAid(int part) {
        Aside aside = plan.assembly().parts().get(part).entry().aside();
        return aside == null ? null : aside.aid();
    }

    boolean isHeld(int part) {
        return holds.stream().anyMatch(hold -> hold.parts().contains(part));
    }

    /** Whether an opened joint bears again: tight, or run down where its tightening comes later by itself. */
    boolean isSecured(int joint) {
        Joint closed = rules.joint(joint);
        if (!closed.entry().kind().threaded()) {
            return fixings[joint] != Fixing.OPEN;
        }
        boolean later = closed.fastener().tighten() != Height.RAISED
                || plan.selection().followUps().stream()
                        .anyMatch(followUp ->
                                closed.entry().timing().tightenAfter().contains(followUp.id()));
        return fixings[joint] == Fixing.TIGHT || later && fixings[joint] == Fixing.RUN_DOWN;
    }

    /** Whether this aid was put on this very part. */
    boolean isOn(String aid, int part) {
        return holds.stream().anyMatch(hold -> hold.aid().equals(aid) && hold.part() == part);
    }

    @Nullable
    Hold holdOf(Step step) {
        for (Hold hold : holds) {
            if (hold.aid().equals(step.aid()) && hold.part() == part(step)) {
                return hold;
            }
        }
        return null;
    }

    void apply(Step step) {
        height = step.height();
        bonds = null;
        switch (step.act()) {
            case UNDO -> {
                fixings[joint(step)] = Fixing.OPEN;
                open.set(joint(step));
                made++;
            }
            case START -> {
                fixings[joint(step)] = Fixing.STARTED;
                open.clear(joint(step));
                endAsides();
            }
            case RUN_DOWN -> fixings[joint(step)] = Fixing.RUN_DOWN;
            case TIGHTEN -> fixings[joint(step)] = Fixing.TIGHT;
            case SUPPORT -> hold(step, true);
            case ASIDE -> moveAside(step);
            case RELEASE -> release(step);
            case OFFER_UP -> comeBack(step);
            case RENEW -> group(step).forEach(renewed::set);
            default -> {}
        }
    }

    /** What comes from outside the car goes where it can, aside if need be; what is on the car goes back to its place. */
    private void comeBack(Step step) {
        if (!bonds().off(part(step))) {
            group(step).forEach(aside::clear);
        }
    }

    /** A part is aside only as long as the joints are open that it needs for that. */
    private void endAsides() {
        aside.stream().filter(part -> !rules.canGoAside(part, open)).forEach(aside::clear);
    }

    private void moveAside(Step step) {
        if (movesAside(step)) {
            aside.set(part(step));
            made++;
        }
        if (step.aid() != null) {
            hold(step, false);
        }
    }

    private void hold(Step step, boolean support) {
        Hold there = holdOf(step);
        if (there != null) {
            there.parts().addAll(group(step));
        } else if (step.aid() != null) {
            holds.add(new Hold(step.aid(), part(step), group(step), support));
        }
    }

    private @Nullable String keptAsideBy(int part) {
        Aside how = rules.part(part).entry().aside();
        return how == null ? null : how.aid();
    }

    private void release(Step step) {
        if (step.part() == null) {
            return;
        }
        if (step.phase() == Phase.TOGETHER && Objects.equals(step.aid(), keptAsideBy(part(step)))) {
            aside.clear(part(step));
        }
        Iterator<Hold> each = holds.iterator();
        while (each.hasNext()) {
            Hold hold = each.next();
            if (hold.aid().equals(step.aid()) && hold.part() == part(step)) {
                each.remove();
                return;
            }
        }
    }
}
