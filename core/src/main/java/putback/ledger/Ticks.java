package putback.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/**
 * Which steps of the plan the events have done. An event ticks the first open step that it can be; one that opens a joint
 * again takes away the ticks of what closed it.
 */
final class Ticks {
    private static final Set<Did> CLOSING = Set.of(Did.CLEAN, Did.START, Did.RUN_DOWN, Did.TIGHTEN, Did.SECOND_LOOK);

    private final List<PlanStep> steps;
    /** The running number of the event that did each step; 0 for none. */
    private final int[] done;

    private final @Nullable Height[] heights;
    private int events;

    Ticks(List<PlanStep> steps) {
        this(steps, new int[steps.size()], new Height[steps.size()], 0);
    }

    private Ticks(List<PlanStep> steps, int[] done, @Nullable Height[] heights, int events) {
        this.steps = steps;
        this.done = done;
        this.heights = heights;
        this.events = events;
    }

    Ticks copy() {
        return new Ticks(steps, done.clone(), Arrays.copyOf(heights, heights.length), events);
    }

    /**
     * @param stated how the car stands, by this event or those before; null where none says
     */
    void add(Event event, @Nullable Height stated) {
        int step = firstOpen(event);
        takeBack(event, step < 0);
        if (step >= 0) {
            events++;
            done[step] = events;
            heights[step] = stated;
        }
    }

    private int firstOpen(Event event) {
        for (int i = 0; i < done.length; i++) {
            if (done[i] == 0 && isOf(steps.get(i), event)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isOf(PlanStep step, Event event) {
        return step.did() == event.did()
                && same(step.joint(), event.joint())
                && same(step.part(), event.part())
                && same(step.followUp(), event.followUp())
                && (event.aid() == null || same(step.aid(), event.aid()))
                && (step.did() != Did.HEIGHT || step.height() == event.height());
    }

    private static boolean same(@Nullable String one, @Nullable String other) {
        return one == null ? other == null : one.equals(other);
    }

    /**
     * @param again whether the plan has no open step for it, so that it is done a second time
     */
    private void takeBack(Event event, boolean again) {
        String joint = event.joint();
        String part = event.part();
        switch (event.did()) {
            case UNDO, REPLACE_FASTENER -> {
                boolean reopens = event.did() == Did.UNDO ? again : isDone(Did.TIGHTEN, joint);
                if (reopens && joint != null) {
                    clear(CLOSING, joint);
                    clearFollowUps(event.did() == Did.UNDO ? joint : null);
                }
            }
            case BREAK_LOOSE -> clear(Set.of(Did.TIGHTEN, Did.SECOND_LOOK), joint);
            case TIGHTEN -> clear(Set.of(Did.SECOND_LOOK), joint);
            case TAKE_OFF -> {
                if (again) {
                    clearLast(Did.OFFER_UP, part);
                }
            }
            case SUPPORT -> {
                if (again) {
                    clearLast(Did.RELEASE, part);
                }
            }
            default -> {}
        }
    }

    private boolean isDone(Did did, @Nullable String joint) {
        for (int i = 0; i < done.length; i++) {
            if (done[i] > 0 && steps.get(i).did() == did && same(steps.get(i).joint(), joint)) {
                return true;
            }
        }
        return false;
    }

    private void clear(Set<Did> which, @Nullable String joint) {
        for (int i = 0; i < done.length; i++) {
            PlanStep step = steps.get(i);
            if (joint != null && joint.equals(step.joint()) && which.contains(step.did())) {
                done[i] = 0;
            }
        }
    }

    private void clearFollowUps(@Nullable String joint) {
        for (int i = 0; i < done.length; i++) {
            PlanStep.Errand errand = steps.get(i).errand();
            if (joint != null && errand != null && errand.broughtBy().contains(joint)) {
                done[i] = 0;
            }
        }
    }

    private void clearLast(Did did, @Nullable String part) {
        for (int i = done.length - 1; i >= 0; i--) {
            if (done[i] > 0 && steps.get(i).did() == did && same(steps.get(i).part(), part)) {
                done[i] = 0;
                return;
            }
        }
    }

    /** Steps that are still to be done, in the plan's order. */
    List<PlanStep> pending() {
        List<PlanStep> pending = new ArrayList<>();
        for (int i = 0; i < done.length; i++) {
            if (done[i] == 0 && !isPassed(i)) {
                pending.add(steps.get(i));
            }
        }
        return pending;
    }

    /** Whether nobody ticked it, and what was done since has made it pointless. */
    private boolean isPassed(int step) {
        PlanStep one = steps.get(step);
        return switch (one.did()) {
            case CHECK, MARK, BREAK_LOOSE -> one.joint() != null && laterIs(step, Set.of(Did.UNDO, Did.START));
            case UNDO, CLEAN -> laterIs(step, Set.of(Did.START, Did.TIGHTEN));
            case START -> laterIs(step, Set.of(Did.RUN_DOWN, Did.TIGHTEN));
            case RUN_DOWN -> laterIs(step, Set.of(Did.TIGHTEN));
            case LOOK -> isGoneOn(one);
            case PREPARE, TAKE_OFF -> laterIs(step, Set.of(Did.OFFER_UP));
            case HEIGHT -> stoodSo(step);
            default -> false;
        };
    }

    /** Whether a later step of the same joint or part is done. */
    private boolean laterIs(int step, Set<Did> which) {
        PlanStep one = steps.get(step);
        for (int i = step + 1; i < done.length; i++) {
            PlanStep later = steps.get(i);
            if (done[i] > 0
                    && which.contains(later.did())
                    && same(one.joint(), later.joint())
                    && same(one.part(), later.part())) {
                return true;
            }
        }
        return false;
    }

    /** Whether something else was done after the joint was opened. */
    private boolean isGoneOn(PlanStep look) {
        int opened = 0;
        for (int i = 0; i < done.length; i++) {
            if (steps.get(i).did() == Did.UNDO && same(steps.get(i).joint(), look.joint())) {
                opened = done[i];
            }
        }
        return opened > 0 && events > opened;
    }

    /** Whether a later step of the plan was done with the car standing as this step makes it stand. */
    private boolean stoodSo(int step) {
        for (int i = step + 1; i < done.length; i++) {
            if (done[i] > 0 && heights[i] == steps.get(step).height()) {
                return true;
            }
        }
        return false;
    }
}
