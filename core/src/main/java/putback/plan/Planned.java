package putback.plan;

import java.util.List;

/** A plan, or why there is none. */
public sealed interface Planned {
    record Sound(Plan plan) implements Planned {}

    /**
     * No sound order exists.
     *
     * @param joints ids of the joints that lock each other
     * @param parts ids of the parts that lock each other
     * @param sentence says it as a mechanic would
     */
    record Locked(List<String> joints, List<String> parts, String sentence) implements Planned {
        public Locked {
            joints = List.copyOf(joints);
            parts = List.copyOf(parts);
        }
    }
}
