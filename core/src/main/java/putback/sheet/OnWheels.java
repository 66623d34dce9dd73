package putback.sheet;

import java.util.ArrayList;
import java.util.List;

/** Finds joints that a sheet wants done on wheels, but behind a wheel, which then has to be off. */
final class OnWheels {
    private static final String WHEEL = "wheel";
    private static final String STEERING_WHEEL = "steering-wheel";

    private OnWheels() {}

    static List<SheetFault> faults(Assembly assembly) {
        List<SheetFault> faults = new ArrayList<>();
        for (Joint joint : assembly.joints()) {
            String key = key(joint);
            if (!key.isEmpty() && behindWheel(assembly, joint)) {
                String access = joint.saysReachOnWheels() ? "reach-on-wheels" : "behind";
                faults.add(new SheetFault(
                        List.of(
                                "joints",
                                Assembler.key(
                                        joint.entry().where(), joint.entry().id()),
                                access),
                        "the joint is wanted on wheels (" + key
                                + ") but is behind its own wheel; say in reach-on-wheels"
                                + " what is in the way with the wheel on, such as [centre-cap]"));
            }
        }
        return faults;
    }

    /** The key that asks for it on wheels, or nothing. */
    private static String key(Joint joint) {
        return joint.fastener().tighten() == Height.ON_WHEELS
                ? "tighten: on wheels"
                : joint.entry().breakLooseOnWheels()
                        ? "break-loose: on wheels"
                        : joint.entry().height() == Height.ON_WHEELS ? "height: on wheels" : "";
    }

    private static boolean behindWheel(Assembly assembly, Joint joint) {
        for (List<Integer> clause : joint.reachOnWheels()) {
            boolean wheels = !clause.isEmpty();
            for (int part : clause) {
                wheels &= isRoadWheel(assembly, part);
            }
            if (wheels) {
                return true;
            }
        }
        return false;
    }

    /** A part called wheel that the car stands on: one of its joints gets its final tightening on wheels. */
    private static boolean isRoadWheel(Assembly assembly, int part) {
        String id = assembly.parts().get(part).entry().id();
        if (!id.equals(WHEEL) && (!id.endsWith("-" + WHEEL) || id.equals(STEERING_WHEEL))) {
            return false;
        }
        for (Joint joint : assembly.joints()) {
            if (joint.fastener().tighten() == Height.ON_WHEELS && joint.joins().contains(part)) {
                return true;
            }
        }
        return false;
    }
}
