package putback.sheet;

import java.util.List;

/**
 * The description of an assembly after its bases and overlays are merged, with defaults filled in.
 *
 * @param sided whether it describes one side that exists left and right
 * @param parts in the order written, without the body
 */
public record Sheet(
        String id,
        String title,
        Lift lift,
        boolean sided,
        List<PartEntry> parts,
        List<JointEntry> joints,
        List<UnitEntry> units,
        List<FollowUp> followUps,
        Times times,
        List<Resort> resorts,
        Setups setups) {
    /** The id of the car itself, which exists in each sheet and never comes off. */
    public static final String BODY = "body";

    public Sheet {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        units = List.copyOf(units);
        followUps = List.copyOf(followUps);
        resorts = List.copyOf(resorts);
    }
}
