package putback.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/**
 * How a car stands by its plan and by what was done: a fold over the events, in the order of the ledger. Never changes;
 * {@link #after} gives the next one.
 */
public final class Standing {
    private final Promised promised;
    private final List<Event> events;
    private final CarStory story;

    private Standing(Promised promised, List<Event> events, CarStory story) {
        this.promised = promised;
        this.events = Collections.unmodifiableList(events);
        this.story = story;
    }

    /** Before anything is done. */
    public static Standing before(Promised promised) {
        return new Standing(promised, List.of(), new CarStory(promised));
    }

    /** After all of these. */
    public static Standing of(Promised promised, List<Event> events) {
        return folded(promised, Struck.once(events));
    }

    private static Standing folded(Promised promised, List<Event> once) {
        CarStory story = new CarStory(promised);
        for (Event event : Struck.remaining(once)) {
            story.add(event);
        }
        return new Standing(promised, once, story);
    }

    /** One thing later. One whose id was there already changes nothing; a correction folds everything anew. */
    public Standing after(Event event) {
        if (event.id() != null && isThere(event.id())) {
            return this;
        }
        List<Event> more = new ArrayList<>(events);
        more.add(event);
        return event.did() == Did.CORRECT ? folded(promised, more) : new Standing(promised, more, story.after(event));
    }

    private boolean isThere(String id) {
        for (Event event : events) {
            if (id.equals(event.id())) {
                return true;
            }
        }
        return false;
    }

    public Promised promised() {
        return promised;
    }

    /** All events, each once, corrections and what they strike out included. */
    public List<Event> events() {
        return events;
    }

    /** Each joint of the plan, then each that the ledger touched beyond it. */
    public Map<String, JointState> joints() {
        Map<String, JointState> states = new LinkedHashMap<>();
        for (String joint : promised.joints().keySet()) {
            states.put(joint, story.stateOf(joint));
        }
        for (String joint : story.joints.keySet()) {
            states.put(joint, story.stateOf(joint));
        }
        return Collections.unmodifiableMap(states);
    }

    /** Each part that the plan or the ledger moves. */
    public Map<String, PartState> parts() {
        Set<String> known = new LinkedHashSet<>();
        for (PlanStep step : promised.steps()) {
            if (step.part() != null) {
                known.add(step.part());
                known.addAll(step.with());
            }
        }
        known.addAll(story.parts.off);
        known.addAll(story.parts.aside);
        Map<String, PartState> states = new LinkedHashMap<>();
        for (String part : known) {
            states.put(part, where(part));
        }
        return Collections.unmodifiableMap(states);
    }

    private PartState where(String part) {
        if (story.parts.off.contains(part)) {
            return PartState.OFF;
        }
        if (!story.parts.aside.contains(part)) {
            return PartState.ON;
        }
        return promised.hung().contains(part) ? PartState.HUNG : PartState.ASIDE;
    }

    /** Parts that are new. */
    public Set<String> renewed() {
        return Collections.unmodifiableSet(story.parts.renewed);
    }

    /** What is on the car only to help, in the order in which it was put on. */
    public List<AidOn> aids() {
        return story.parts.aids();
    }

    /** How the car stands, by the last event that says so; null where none does. */
    public @Nullable Height height() {
        return story.footing.stated();
    }

    /** How many fasteners are out of their holes; a joint that the plan does not know counts as one. */
    public int fastenersOut() {
        int out = 0;
        for (Map.Entry<String, JointState> joint : joints().entrySet()) {
            out += joint.getValue() == JointState.OUT ? count(joint.getKey()) : 0;
        }
        return out;
    }

    /** How many fasteners are new since their joint was last opened. */
    public int fastenersReplaced() {
        int replaced = 0;
        for (Map.Entry<String, JointStory> joint : story.joints.entrySet()) {
            replaced += joint.getValue().isReplaced() ? count(joint.getKey()) : 0;
        }
        return replaced;
    }

    private int count(String joint) {
        Fixing fixing = promised.joints().get(joint);
        return fixing == null ? 1 : fixing.count();
    }

    /** Each tightening that names its wrench. */
    public List<WrenchUse> wrenchUses() {
        return List.copyOf(story.uses);
    }

    /**
     * How often a wrench was pulled since its calibration; a tightening without a time counts.
     *
     * @param calibrated null to count all
     */
    public int operations(String wrench, @Nullable Instant calibrated) {
        int operations = 0;
        for (WrenchUse use : story.uses) {
            boolean since = calibrated == null || use.at() == null || !use.at().isBefore(calibrated);
            operations += since && use.wrench().equals(wrench) ? use.operations() : 0;
        }
        return operations;
    }

    /** Steps of the plan that are still to be done, in its order. */
    public List<PlanStep> toDo() {
        return story.ticks.pending();
    }

    /** Who wrote down the last thing that counts, and when. */
    public Signature last() {
        return story.last;
    }

    /** What the job still owes. */
    public Owing owing() {
        return Reckoning.of(story);
    }
}
