package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** What has been let down on a jack, stage by stage, and which joints each stage was for. */
final class Lowerings {
    private final List<Stage> stages = new ArrayList<>();

    /**
     * @param askers the joints before whose closing it is raised again
     * @param forSpring whether it went down so that a spring comes out, with joints that ask for it still shut
     */
    private record Stage(int part, BitSet askers, boolean forSpring) {}

    Lowerings copy() {
        Lowerings copy = new Lowerings();
        copy.stages.addAll(stages);
        return copy;
    }

    boolean isEmpty() {
        return stages.isEmpty();
    }

    boolean isDown(int part) {
        for (Stage stage : stages) {
            if (stage.part == part) {
                return true;
            }
        }
        return false;
    }

    /** Whether it may go down once more: only as far as a spring asked for, until now. */
    boolean mayGoFurther(int part) {
        for (Stage stage : stages) {
            if (stage.part == part && !stage.forSpring) {
                return false;
            }
        }
        return true;
    }

    /** What is down, each once. */
    BitSet parts() {
        BitSet parts = new BitSet();
        for (Stage stage : stages) {
            parts.set(stage.part);
        }
        return parts;
    }

    /** The askers of a part whose stage has gone down already. */
    private BitSet served(int part) {
        BitSet served = new BitSet();
        for (Stage stage : stages) {
            if (stage.part == part) {
                served.or(stage.askers);
            }
        }
        return served;
    }

    void add(int part, BitSet askers, boolean forSpring) {
        BitSet own = (BitSet) askers.clone();
        own.andNot(served(part));
        stages.add(new Stage(part, own, forSpring));
    }

    /** Raises the part for a joint: from its stage and all that went down after it; whether it was down for that. */
    boolean raise(int part, int joint) {
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i).part == part && stages.get(i).askers.get(joint)) {
                for (int later = stages.size() - 1; later >= i; later--) {
                    if (stages.get(later).part == part) {
                        stages.remove(later);
                    }
                }
                return true;
            }
        }
        return false;
    }
}
