package putback.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Where a sheet does not say how a spring loses its load before something that holds it is opened. It can be planned, but
 * the plan may part things in the wrong order.
 */
public final class SpringDoubts {
    private SpringDoubts() {}

    /** Sentences for a person, each beginning with the joint; what is the same on both sides is said once. */
    public static List<String> of(Assembly assembly) {
        Set<String> doubts = new LinkedHashSet<>();
        for (SeatedSpring spring : SeatedSpring.of(assembly)) {
            String name = assembly.parts().get(spring.spring()).entry().id();
            for (int seat : spring.seats()) {
                Joint joint = assembly.joints().get(seat);
                if (!losesItsLoad(assembly, spring, joint)) {
                    doubts.add(
                            "joint " + joint.entry().id() + ": it can be opened while " + name
                                    + " is under load; write in after what lets the spring go: a joint that"
                                    + " lets-go of it with its compressor, or of what it stands on with a jack, then: let down.");
                }
            }
            for (Joint joint : assembly.joints()) {
                if (spring.isLetDownBy(joint) && !isOrdered(assembly, spring, joint)) {
                    doubts.add("joint " + joint.entry().id() + ": it lets down what " + name
                            + " stands on, and nothing says that the spring is out first; write ahead-of: ["
                            + joint.entry().id() + "] at the spring's seats, or " + name
                            + " in behind here, or this joint in after of the seats.");
                }
            }
        }
        return new ArrayList<>(doubts);
    }

    /** Whether the seat, or what has to be open before it, lets the spring go in hand or down. */
    private static boolean losesItsLoad(Assembly assembly, SeatedSpring spring, Joint seat) {
        SeatedSpring alone = new SeatedSpring(spring.spring(), List.of(seat.index()), spring.ends());
        BitSet before = alone.before(assembly);
        before.set(seat.index());
        for (int index = before.nextSetBit(0); index >= 0; index = before.nextSetBit(index + 1)) {
            Joint joint = assembly.joints().get(index);
            if (spring.isHeldFor(joint) || spring.isLetDownBy(joint)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the joint lets the spring go, or comes when the spring is out. */
    private static boolean isOrdered(Assembly assembly, SeatedSpring spring, Joint joint) {
        boolean ordered = spring.before(assembly).get(joint.index());
        for (List<Integer> clause : joint.behind()) {
            ordered |= clause.equals(List.of(spring.spring()));
        }
        for (int seat : spring.seats()) {
            ordered |= assembly.joints().get(seat).aheadOf().contains(joint.index())
                    || joint.after().contains(seat);
        }
        return ordered;
    }
}
