package putback.plan.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import putback.sheet.FollowUp;
import putback.sheet.Joint;
import putback.sheet.JointKind;
import putback.sheet.Part;

/**
 * What is looked at at the end of brake work, as far as the sheet's own follow-ups do not say it: pedal, fluid, parking
 * brake, bedding in. Common practice, no source.
 */
final class BrakeChecks {
    private static final String COMMON = "Common practice, no source: the maker's word rules.";
    private static final List<String> FRICTION =
            List.of("pads", "brake-pad", "shoes", "brake-shoe", "disc", "drum", "rotor");
    private static final List<String> ON_PISTON =
            List.of("pads", "brake-pad", "shoes", "brake-shoe", "caliper", "wheel-cylinder");
    private static final List<String> BY_HAND = List.of("parking", "hand-brake", "handbrake");

    private final Job job;
    private final StepLog log;

    BrakeChecks(Job job, StepLog log) {
        this.job = job;
        this.log = log;
    }

    void run() {
        boolean opened = opensHydraulics();
        boolean pistonMoved = opens(ON_PISTON) || isRenewed(FRICTION) || isRenewed(ON_PISTON);
        if (!opened && !pistonMoved && !opens(FRICTION)) {
            return;
        }
        if (!isFollowUp("pedal")) {
            add("Pump the brake pedal until it is firm, before the car moves.", "The first push may go to the floor.");
        }
        if ((opened || pistonMoved) && !isFollowUp("fluid")) {
            add(
                    "Brake fluid between its marks in the reservoir, and its cap on.",
                    "Pistons pushed back raise it, bleeding lowers it; what is over the mark spills on paint.");
        }
        if (pistonMoved && hasParkingBrake() && !isFollowUp("travel")) {
            add(
                    "Parking brake: work the lever several times, check its travel, that it holds and that it lets go.",
                    "An adjuster that was wound back takes up only as it is worked.");
        }
        if (isRenewed(FRICTION) && !isFollowUp("bed")) {
            add(
                    "Bed in the new " + friction() + " as the maker says, on a clear road, and tell the owner.",
                    "Until then it takes longer to stop: no hard braking that is not needed.");
        }
    }

    private void add(String text, String why) {
        log.add(Draft.of(Act.CHECK, text).caution(List.of(why, COMMON)));
    }

    private boolean isRenewed(List<String> words) {
        boolean renewed = false;
        for (Part part : job.assembly.parts()) {
            renewed |= job.renewal.renews(part.index()) && isCalled(part, words);
        }
        return renewed;
    }

    /** What is renewed and rubs, each name once. */
    private String friction() {
        List<String> names = new ArrayList<>();
        for (Part part : job.assembly.parts()) {
            String name = Words.low(part.entry().name());
            if (job.renewal.renews(part.index()) && isCalled(part, FRICTION) && !names.contains(name)) {
                names.add(name);
            }
        }
        return Words.list(names);
    }

    private static boolean isCalled(Part part, List<String> words) {
        String id = part.entry().id();
        for (String word : words) {
            if (Words.endsWith(id, word)) {
                return !id.contains("clutch");
            }
        }
        return false;
    }

    private boolean opensHydraulics() {
        boolean opens = false;
        for (int index = job.opened.nextSetBit(0); index >= 0; index = job.opened.nextSetBit(index + 1)) {
            opens |= job.joint(index).entry().kind() == JointKind.UNION;
        }
        return opens;
    }

    /** Whether a fixing of a part so called is opened; what only leads a cable or wire to it is none. */
    private boolean opens(List<String> words) {
        for (int index = job.opened.nextSetBit(0); index >= 0; index = job.opened.nextSetBit(index + 1)) {
            Joint joint = job.joint(index);
            if (joint.entry().kind() == JointKind.HOOK || joint.entry().kind() == JointKind.PLUG) {
                continue;
            }
            for (int part : joint.joins()) {
                if (isCalled(job.part(part), words)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean hasParkingBrake() {
        for (Part part : job.assembly.parts()) {
            for (String word : BY_HAND) {
                if (part.entry().id().contains(word)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean isFollowUp(String word) {
        for (FollowUp followUp : job.selection.followUps()) {
            if (followUp.name().toLowerCase(Locale.ROOT).contains(word)) {
                return true;
            }
        }
        return false;
    }
}
