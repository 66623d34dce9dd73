package putback.proof;

import java.util.ArrayList;
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
        List<Case> cases = new ArrayList<>();
        if (room.isEmpty() || room.equals(FastenerCase.ROOM)) {
            ThreadCases.add(cases);
            ClampCases.add(cases);
            ExampleCases.add(cases);
        }
        if (room.isEmpty() || room.equals(PlanningCases.ROOM)) {
            cases.addAll(PlanningCases.all());
        }
        if (room.isEmpty() || room.equals(LabourFigure.ROOM)) {
            cases.addAll(LabourCases.all());
        }
        if (room.isEmpty() || room.equals(CornerCases.ROOM)) {
            cases.addAll(CornerCases.all());
            cases.addAll(ReadingCases.all());
        }
        return List.copyOf(cases);
    }

    /** The rooms that have cases. */
    public static List<String> rooms() {
        return List.of(FastenerCase.ROOM, PlanningCases.ROOM, LabourFigure.ROOM, CornerCases.ROOM);
    }
}
