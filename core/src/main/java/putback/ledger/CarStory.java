package putback.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What happened to the whole car, folded event by event. */
final class CarStory {
    final Promised promised;
    final Map<String, JointStory> joints = new LinkedHashMap<>();
    final PartStory parts;
    final FollowUpStory followUps;
    final List<Event> carries = new ArrayList<>();
    final List<WrenchUse> uses = new ArrayList<>();
    final Ticks ticks;
    Footing footing = Footing.NOT_SAID;
    Signature last = Signature.NONE;

    CarStory(Promised promised) {
        this(promised, new PartStory(promised), new FollowUpStory(promised), new Ticks(promised.steps()));
    }

    private CarStory(Promised promised, PartStory parts, FollowUpStory followUps, Ticks ticks) {
        this.promised = promised;
        this.parts = parts;
        this.followUps = followUps;
        this.ticks = ticks;
    }

    /** The same with one thing done more; this one stays as it is. */
    CarStory after(Event event) {
        CarStory copy = new CarStory(promised, parts.copy(), followUps.copy(), ticks.copy());
        for (Map.Entry<String, JointStory> joint : joints.entrySet()) {
            copy.joints.put(joint.getKey(), joint.getValue().copy());
        }
        copy.carries.addAll(carries);
        copy.uses.addAll(uses);
        copy.footing = footing;
        copy.last = last;
        copy.add(event);
        return copy;
    }

    void add(Event event) {
        String joint = event.joint();
        Footing before = footing;
        footing = footing.after(event);
        if (joint != null && event.did() != Did.CARRY && event.did() != Did.NOTE) {
            joints.computeIfAbsent(joint, id -> new JointStory()).add(event, before.set(), followUps.due());
        }
        String wrench = event.wrench();
        if (event.did() == Did.TIGHTEN && joint != null && wrench != null) {
            uses.add(WrenchUse.of(event, wrench, promised.joints().get(joint)));
        }
        parts.add(event);
        followUps.add(event, before);
        ticks.add(event, footing.stated());
        if (event.did() == Did.CARRY) {
            carries.add(event);
        }
        last = event.signature();
    }

    JointState stateOf(String joint) {
        JointStory story = joints.get(joint);
        return story == null
                ? JointState.UNTOUCHED
                : JointState.of(story, promised.joints().get(joint));
    }
}
