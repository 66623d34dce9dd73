package putback.ledger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a plan promised, as far as the handover asks for it.
 *
 * @param steps in the plan's order
 * @param joints by id, in the plan's order
 * @param renewed ids of parts, with what is renewed in one piece with each
 * @param followUps by id
 * @param leaves by the id of a part that is taken off, what leaves in one piece with it
 * @param comes by the id of a part that is offered up, what comes in one piece with it
 * @param hung ids of the parts that dangle from their tethers
 * @param names of joints, parts and follow-ups by id; an id without one is its own name
 */
public record Promised(
        List<PlanStep> steps,
        Map<String, Fixing> joints,
        Map<String, List<String>> renewed,
        Map<String, PlanStep.Errand> followUps,
        Map<String, List<String>> leaves,
        Map<String, List<String>> comes,
        Set<String> hung,
        Map<String, String> names) {
    public Promised {
        steps = List.copyOf(steps);
        joints = ordered(joints);
        renewed = ordered(renewed);
        followUps = ordered(followUps);
        leaves = ordered(leaves);
        comes = ordered(comes);
        hung = Collections.unmodifiableSet(new LinkedHashSet<>(hung));
        names = ordered(names);
    }

    private static <V> Map<String, V> ordered(Map<String, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    /**
     * What these steps promise.
     *
     * @param followUps ids of all that the plan owes, those without a step too
     */
    public static Promised of(
            List<PlanStep> steps, List<String> followUps, Set<String> hung, Map<String, String> names) {
        Map<String, Fixing> joints = new LinkedHashMap<>();
        Map<String, List<String>> renewed = new LinkedHashMap<>();
        Map<String, List<String>> leaves = new LinkedHashMap<>();
        Map<String, List<String>> comes = new LinkedHashMap<>();
        for (PlanStep step : steps) {
            String part = step.part();
            if (step.joint() != null && isAboutTheFixing(step.did())) {
                joints.put(
                        step.joint(),
                        joints.getOrDefault(step.joint(), Fixing.PLAIN).with(step));
            }
            if (part != null) {
                switch (step.did()) {
                    case TAKE_OFF -> leaves.put(part, step.with());
                    case OFFER_UP -> comes.put(part, step.with());
                    case RENEW -> renewed.put(part, step.with());
                    default -> {}
                }
            }
        }
        return new Promised(steps, joints, renewed, errands(steps, followUps), leaves, comes, hung, names);
    }

    private static boolean isAboutTheFixing(Did did) {
        return did == Did.UNDO || did == Did.START || did == Did.TIGHTEN || did == Did.SECOND_LOOK;
    }

    private static Map<String, PlanStep.Errand> errands(List<PlanStep> steps, List<String> followUps) {
        Map<String, List<String>> brought = new LinkedHashMap<>();
        Map<String, PlanStep.Errand> errands = new LinkedHashMap<>();
        for (PlanStep step : steps) {
            if (step.did() == Did.UNDO && step.joint() != null) {
                for (String id : step.brings()) {
                    brought.computeIfAbsent(id, none -> new ArrayList<>()).add(step.joint());
                }
            }
            if (step.followUp() != null && step.errand() != null) {
                errands.put(step.followUp(), step.errand());
            }
        }
        for (String id : followUps) {
            errands.putIfAbsent(id, PlanStep.Errand.PLAIN);
        }
        for (Map.Entry<String, PlanStep.Errand> errand : errands.entrySet()) {
            List<String> by = brought.get(errand.getKey());
            if (by != null) {
                PlanStep.Errand known = errand.getValue();
                errand.setValue(new PlanStep.Errand(by, known.height(), known.follows()));
            }
        }
        return errands;
    }

    /** What keeps a part that the plan moves aside; null for nothing, or where the plan does not move it. */
    @Nullable
    String aidOfAside(String part) {
        for (PlanStep step : steps) {
            if (step.did() == Did.ASIDE && part.equals(step.part())) {
                return step.aid();
            }
        }
        return null;
    }

    /** What a joint, a part or a follow-up is called: {@code Wheel nuts, left}. */
    public String name(String id) {
        return names.getOrDefault(id, id);
    }

    /** The same inside a sentence: {@code wheel nuts, left}; {@code ABS lead, left} keeps its capitals. */
    public String nameInside(String id) {
        String name = name(id);
        boolean word = name.length() < 2 || Character.isLowerCase(name.charAt(1)) || name.charAt(1) == ' ';
        return name.isEmpty() || !word ? name : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
