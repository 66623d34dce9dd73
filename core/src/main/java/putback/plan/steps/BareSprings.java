package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Numbers;
import putback.plan.access.Ties;
import putback.sheet.Joint;
import putback.sheet.JointKind;
import putback.sheet.Letting;
import putback.sheet.Part;
import putback.sheet.SeatedSpring;
import putback.sheet.Side;
import putback.sheet.StoredEnergy;

/** What is said where a spring's seats, or what keeps it between them, are opened; warns where nothing takes its load. */
final class BareSprings {
    private static final String FREED =
            "Spring under load: nothing else keeps it in once this is open, and the sheet names nothing that takes its load."
                    + " Do not undo this before the spring is slack or in a compressor.";

    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final ApartScene scene;

    BareSprings(Job job, StepLog log, AidsOn aids, ApartScene scene) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.scene = scene;
    }

    /** What is said before a joint is undone. */
    List<String> before(Joint joint) {
        List<String> lines = new ArrayList<>();
        for (SeatedSpring spring : job.springs) {
            if (spring.seats().contains(joint.index())) {
                lines.add(Cautions.SPRING);
                if (isLeftStanding(spring)) {
                    lines.add(leftStanding(job.part(spring.spring())));
                }
            } else if (isLoaded(spring)) {
                lines.addAll(letGoBy(joint, spring));
            }
        }
        return lines;
    }

    private List<String> letGoBy(Joint joint, SeatedSpring spring) {
        Letting letting = lettingDown(joint, spring);
        if (letting != null) {
            return List.of(stayIn(letting.part()) ? Cautions.SPRING_STAYS : Cautions.SPRING_ON_JACK);
        }
        if (!Cautions.letsGo(joint, spring.spring()) && frees(joint, spring)) {
            log.warn("With " + Words.of(joint) + " open nothing keeps " + Words.the(job.part(spring.spring()))
                    + " in, and the sheet names neither a compressor nor a jack for it.");
            return List.of(FREED);
        }
        return List.of();
    }

    /** Still in all its seats, not slack, and no compressor on it. */
    private boolean isLoaded(SeatedSpring spring) {
        for (int seat : spring.seats()) {
            if (scene.open.get(seat)) {
                return false;
            }
        }
        return !isSlack(job.part(spring.spring())) && !isHeld(spring.spring());
    }

    private @Nullable Letting lettingDown(Joint joint, SeatedSpring spring) {
        for (Letting letting : joint.letsGo()) {
            if (letting.letDown() && standsOn(spring, letting.part())) {
                return letting;
            }
        }
        return null;
    }

    /** Whether all springs on a part stay in, and nothing of it is opened that does not let it go: it stays up then. */
    boolean stayIn(int part) {
        boolean springs = false;
        for (SeatedSpring spring : job.springs) {
            if (standsOn(spring, part)) {
                if (Numbers.anyIn(spring.seats(), job.opened)) {
                    return false;
                }
                springs = true;
            }
        }
        return springs && !isOpenedOtherwise(part);
    }

    private boolean isOpenedOtherwise(int part) {
        for (int joint : Numbers.in(job.opened)) {
            if (job.joint(joint).joins().contains(part) && !Cautions.letsGo(job.joint(joint), part)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the part, or what is in one piece with it, is an end of the spring. */
    boolean standsOn(SeatedSpring spring, int part) {
        for (int end : spring.ends()) {
            if (end == part || end != 0 && scene.ties().heldTogether(end, part)) {
                return true;
            }
        }
        return false;
    }

    /** Whether its ends hang together by more than the spring now, and no longer with the joint open. */
    private boolean frees(Joint joint, SeatedSpring spring) {
        JointKind kind = joint.entry().kind();
        if (kind == JointKind.CLIP
                || kind == JointKind.PLUG
                || kind == JointKind.HOOK
                || spring.ends().size() < 2) {
            return false;
        }
        BitSet open = (BitSet) scene.open.clone();
        for (int seat : spring.seats()) {
            open.set(seat);
        }
        Ties now = job.ties(open);
        open.set(joint.index());
        return holds(now, spring.ends()) && !holds(job.ties(open), spring.ends());
    }

    private static boolean holds(Ties ties, List<Integer> ends) {
        boolean all = true;
        for (int end : ends) {
            all &= ties.heldTogether(ends.get(0), end);
        }
        return all;
    }

    /** Whether the plan opens a seat of it and leaves the spring in another one. */
    private boolean isLeftStanding(SeatedSpring spring) {
        return !job.off.get(spring.spring()) && !isHeld(spring.spring());
    }

    private static String leftStanding(Part spring) {
        return "Once slack, " + Words.the(spring)
                + " stands or hangs by nothing: lift it out and lay it by, even where this plan leaves it in its other seat.";
    }

    /** What is said as a part goes down on its jack. */
    List<String> goingDown(int part) {
        List<String> lines = new ArrayList<>();
        for (SeatedSpring spring : job.springs) {
            if (isLoaded(spring) && standsOn(spring, part)) {
                lines.add(
                        Numbers.anyIn(spring.seats(), job.opened)
                                ? "Spring under load: down only until the spring is loose in its seats, and no further."
                                : Cautions.SPRING_ON_JACK);
            }
        }
        return lines;
    }

    void after(Joint joint) {
        if (joint.entry().kind() != JointKind.SEAT) {
            return;
        }
        for (Part part : springsIn(joint)) {
            if (!isHeld(part.index()) && !isSlack(part)) {
                log.warn("The sheet names neither a compressor nor a jack that lets " + Words.the(part)
                        + " go slack before opening " + Words.of(joint) + ".");
            }
        }
    }

    private List<Part> springsIn(Joint joint) {
        BitSet parts = new BitSet();
        for (int index : joint.joins()) {
            parts.set(index, job.part(index).entry().storedEnergy() == StoredEnergy.SPRING);
        }
        for (SeatedSpring spring : job.springs) {
            if (spring.seats().contains(joint.index())) {
                parts.set(spring.spring());
            }
        }
        return job.parts(parts);
    }

    private boolean isHeld(int spring) {
        for (AidsOn.On aid : aids.all()) {
            if (Job.isCompressor(aid.name) && aid.part.index() == spring) {
                return true;
            }
        }
        return false;
    }

    private boolean isSlack(Part spring) {
        for (int index : Numbers.in(scene.lowerings.parts())) {
            Side side = job.part(index).side();
            if (side == spring.side() || side == Side.NONE) {
                return true;
            }
        }
        return false;
    }
}
