package putback.proof;

import java.util.List;

/** All cases. */
public final class Proofs {
    private Proofs() {}

    /**
     * Runs the cases of a room.
     *
     * @param room such as {@code plan}; empty for all
     */
    public static List<Case> run(String room) {
        return PlanningCases.all().stream()
                .filter(one -> room.isEmpty() || one.room().equals(room))
                .toList();
    }

    /** The rooms that have cases. */
    public static List<String> rooms() {
        return List.of("plan");
    }
}
