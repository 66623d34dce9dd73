package putback.plan.steps;

import java.util.ArrayList;
import java.util.List;
import putback.sheet.Height;
import putback.sheet.Lift;
import putback.sheet.Part;

/** How the car is made to stand, said so that it stays there. */
final class Standing {
    private final Job job;

    Standing(Job job) {
        this.job = job;
    }

    /**
     * @param wheelOff whether a road wheel is off when this is done
     */
    Draft step(Height from, Height to, boolean wheelOff) {
        return switch (to) {
            case RAISED -> from == Height.RIDE_HEIGHT ? unload() : raise();
            case RIDE_HEIGHT -> setsMeasuredHeight(to, wheelOff) ? loadByJack() : loadOnWheels();
            case ON_WHEELS, ANY -> lower();
        };
    }

    /** Whether a height is set then that somebody has to have measured while the car still stood on its wheels. */
    static boolean setsMeasuredHeight(Height to, boolean wheelOff) {
        return to == Height.RIDE_HEIGHT && wheelOff;
    }

    /** As the car came in, before anything is done to it. */
    static Draft measure() {
        return Draft.of(
                        Act.CHECK,
                        "Measure hub centre to arch, left and right, and write it down: ride height is set by it later.")
                .caution(
                        List.of(
                                "On level ground, nobody in it, tyres at their pressure: once it hangs, nobody can tell any more."));
    }

    private Draft raise() {
        Lift lift = job.assembly.sheet().lift();
        String at = lift.points().isEmpty() ? "its lifting points" : lift.points();
        Draft draft = Draft.of(
                Act.HEIGHT, "Raise the car at " + at + " and set it on stands or the lift with its wheels hanging.");
        List<String> cautions = new ArrayList<>();
        if (lift.points().isEmpty()) {
            cautions.add(
                    "Lifting points are not in the sheet: take the maker's, and look for rust before you trust them.");
        }
        if (!lift.note().isEmpty()) {
            cautions.add("Lifting: " + lift.note() + ".");
        }
        cautions.add("Chock the wheels that stay on the ground, fore and aft: a car rolls off its stands.");
        cautions.add(
                "Rated stands at fixed points, never under an arm or beam that moves: it swings once it is undone.");
        cautions.add("Never under a jack only: jacks sink.");
        List<Part> heavy = job.heavy();
        if (!heavy.isEmpty()) {
            cautions.add(
                    "Set a second support at each end before " + Words.the(heavy) + " is let go: the weight shifts.");
        }
        return draft.caution(cautions);
    }

    private static Draft unload() {
        return Draft.of(Act.HEIGHT, "Take the load off again and let the wheels hang, the car on its stands.")
                .caution(List.of("Stands stay where they are: only the jack comes down."));
    }

    private static Draft loadByJack() {
        return Draft.of(
                        Act.HEIGHT,
                        "Load the suspension to ride height with a jack under the arm or hub: hub centre to arch as measured"
                                + " when the car came in.")
                .caution(List.of(
                        "Both sides alike, or the bar pulls the other way.",
                        "The car stays on its stands: the jack only loads the arm, and it is not what you lie under."));
    }

    private static Draft loadOnWheels() {
        return Draft.of(
                        Act.HEIGHT,
                        "Bring the car to ride height with its wheels carrying the weight, raised enough to get at it.")
                .caution(List.of(
                        "Wheels on plates, ramps or blocks that cannot roll or tip: the full weight is on them."));
    }

    private static Draft lower() {
        return Draft.of(Act.HEIGHT, "Lower the car on its wheels.")
                .caution(List.of(
                        "Nobody and nothing under it; stands and jacks come out first.",
                        "Chocks stay until the wheels are tight: it must not roll on loose fasteners."));
    }
}
