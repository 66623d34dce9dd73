package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import putback.sheet.Doubts;
import putback.sheet.Fastener;
import putback.sheet.Holding;
import putback.sheet.Joint;
import putback.sheet.JointKind;
import putback.sheet.Letting;
import putback.sheet.Naming;
import putback.sheet.Part;
import putback.sheet.StoredEnergy;
import putback.sheet.Tightening;

/** What is said where the hand is: one line and its reason. */
final class Cautions {
    static final String SPRING =
            "Spring under load: face out of its line, and never undo this until the spring is loose in its seats.";
    static final String SPRING_ON_JACK =
            "Spring under load: the jack holds it, so stand clear and let it go slack before you reach in.";
    static final String SPRING_STAYS =
            "Spring under load: the jack alone keeps it in, so it stays up, and nobody reaches between coils and seats.";
    static final String TAKES_LOAD =
            "Springs take load: both ends of each home in their seats first, then up slowly and stand clear; an end that is not home jumps.";
    private static final String GAS = "Gas under pressure: never heat, cut or open the damper, it bursts.";
    private static final String BAR = "Bar under twist: undo it with both sides hanging or both loaded, or it whips.";
    private static final String ROD =
            "Hold the rod by its own hexagon, never with pliers, and no impact wrench: a marked rod leaks.";
    private static final String UNION = "Brake fluid: eyes covered, drips caught, both ends plugged; it strips paint.";
    private static final String DUST = "Brake dust: wipe it wet, never brush or blow it dry; it is not to be breathed.";
    private static final String TAPER = "Leave the nut on by a few threads: the taper lets go with a bang.";
    private static final String IMPACT = "No impact wrench for the last turn: only a torque wrench knows when to stop.";
    private static final String SAME_SIDE =
            "Turn the side that the figure is meant for, hold the other: nut and bolt head do not rub alike.";
    private static final String WHEEL =
            "Wheel, hub and seats clean, threads clean and dry: what lies between them settles and the fasteners go loose.";
    private static final String UNKNOWN = "Torque not known: take it from the maker's data.";
    private static final String WRONG_TORQUE = "Do not pull this torque before the maker's data bear it out: ";
    private static final List<String> BRAKES = List.of("caliper", "pad", "disc", "drum", "shoe");

    private final Job job;
    private final TetherCautions tethers;

    Cautions(Job job) {
        this.job = job;
        this.tethers = new TetherCautions(job);
    }

    List<String> beforeOpening(String text) {
        String said = text.toLowerCase(Locale.ROOT);
        List<String> lines = new ArrayList<>();
        if (said.contains("parking brake")) {
            lines.add("Fingers out of the caliper: an electric parking brake closes without warning.");
        }
        if (said.contains("airbag")) {
            lines.add(
                    "Airbag: ignition off, battery off and covered, wait as long as the maker says; it fires on a stray current.");
        }
        if (said.contains("high voltage") || said.contains("high-voltage")) {
            lines.add("High voltage: proved dead by a trained person only; hands off orange cables.");
        }
        return lines;
    }

    /**
     * @param open what is open already: what was said at one of those joints is not said again
     */
    List<String> undo(Joint joint, BitSet open) {
        List<String> lines = new ArrayList<>();
        JointKind kind = joint.entry().kind();
        for (String shut : joint.entry().wording().staysShut()) {
            lines.add("Leave " + lookAlike(shut, joint) + " alone: it looks alike and stays shut.");
        }
        lines.addAll(energy(joint, open));
        if (turnsRod(joint, joint.fastener())) {
            lines.add(ROD);
        }
        if (kind == JointKind.UNION) {
            lines.add(UNION);
        }
        if (kind == JointKind.TAPER) {
            lines.add(TAPER);
        }
        if (atBrake(joint)) {
            lines.add(DUST);
        }
        for (Part heavy : job.heavy()) {
            if (letsGo(joint, heavy.index())) {
                lines.add("Second support in place before " + Words.the(heavy) + " is let go: the weight shifts.");
            }
        }
        return lines;
    }

    static boolean letsGo(Joint joint, int part) {
        for (Letting letting : joint.letsGo()) {
            if (letting.part() == part) {
                return true;
            }
        }
        return false;
    }

    private List<String> energy(Joint joint, BitSet open) {
        List<String> lines = new ArrayList<>();
        boolean compressor = false;
        boolean onJack = false;
        for (Letting letting : joint.letsGo()) {
            compressor |= Job.isCompressor(letting);
            onJack |= Job.isJack(letting.aid());
        }
        for (StoredEnergy stored : energies(joint)) {
            switch (stored) {
                case SPRING -> lines.add(onJack && !compressor ? SPRING_ON_JACK : SPRING);
                case GAS -> lines.addAll(gas(joint, open));
                case TWISTED_BAR -> lines.add(BAR);
                case NONE -> {}
            }
        }
        return lines;
    }

    /** Once a damper, at the first fastener that might be seized. */
    private List<String> gas(Joint joint, BitSet open) {
        boolean news = false;
        for (int part : joint.joins()) {
            news |= holdsGas(job.part(part)) && !isSaid(part, open);
        }
        return news && maySeize(joint) ? List.of(GAS) : List.of();
    }

    private static boolean holdsGas(Part part) {
        return part.entry().storedEnergy() == StoredEnergy.GAS;
    }

    private boolean isSaid(int part, BitSet open) {
        for (int other = open.nextSetBit(0); other >= 0; other = open.nextSetBit(other + 1)) {
            if (job.joint(other).joins().contains(part) && maySeize(job.joint(other))) {
                return true;
            }
        }
        return false;
    }

    private boolean maySeize(Joint joint) {
        return job.threaded(joint) || joint.entry().kind() == JointKind.PRESS;
    }

    private Set<StoredEnergy> energies(Joint joint) {
        Set<StoredEnergy> energies = EnumSet.noneOf(StoredEnergy.class);
        for (int part : joint.joins()) {
            energies.add(job.part(part).entry().storedEnergy());
        }
        for (Letting letting : joint.letsGo()) {
            energies.add(job.part(letting.part()).entry().storedEnergy());
        }
        energies.remove(StoredEnergy.NONE);
        return energies;
    }

    private String lookAlike(String written, Joint joint) {
        for (Joint other : job.assembly.joints()) {
            if (other.id().equals(written) || other.id().equals(joint.side().prefix() + written)) {
                return Words.of(other);
            }
        }
        return written.contains(" ") ? written : "the " + Words.low(Naming.fromId(written));
    }

    private boolean turnsRod(Joint joint, Fastener fastener) {
        boolean gas = false;
        boolean link = false;
        for (int part : joint.joins()) {
            gas |= holdsGas(job.part(part));
            link |= job.part(part).entry().id().contains("link");
        }
        String id = joint.entry().id();
        boolean named = id.endsWith("rod-nut") && !id.contains("track") && !id.contains("tie");
        return job.threaded(joint) && !link && (gas && fastener.hold() instanceof Holding.ByKey || named);
    }

    private boolean atBrake(Joint joint) {
        for (int part : joint.joins()) {
            for (String word : BRAKES) {
                if (job.part(part).entry().id().contains(word)) {
                    return true;
                }
            }
        }
        return false;
    }

    static List<String> leftHand(Joint joint) {
        return joint.fastener().leftHanded() ? List.of("Left-hand thread: it comes loose clockwise.") : List.of();
    }

    static List<String> leftHandBack(Fastener back) {
        return back.leftHanded() ? List.of("Left-hand thread: it goes on anticlockwise.") : List.of();
    }

    List<String> support(Part part, String aid, BitSet open) {
        List<String> lines = new ArrayList<>();
        if (Job.isCompressor(aid)) {
            lines.add(
                    "Hooks opposite each other and locked over the coils, turned by hand evenly, no impact wrench: they slip.");
            lines.add("Face out of the spring's line: it carries enough to break bones.");
        }
        if (Job.isJack(aid)) {
            lines.add("The jack holds the part, not the car, and nobody lies under it: jacks sink.");
        }
        lines.addAll(tethers(List.of(part), open));
        return lines;
    }

    /** What the flexible parts still tied to something that hangs must not be asked to bear. */
    List<String> tethers(List<Part> hanging, BitSet open) {
        return tethers.of(hanging, open);
    }

    List<String> renew(List<Part> parts) {
        boolean gas = false;
        for (Part part : parts) {
            gas |= holdsGas(part);
        }
        return gas
                ? List.of("The old one still holds gas: it is scrapped by the maker's procedure, not with a torch.")
                : List.of();
    }

    List<String> start(Joint joint, Fastener back) {
        List<String> lines = new ArrayList<>();
        if (back.singleUse()) {
            lines.add("Single-use: the old " + Words.they(back, "one", "ones") + " will not hold again.");
        }
        if (job.holdsWheel(joint)) {
            lines.add(WHEEL);
        }
        if (energies(joint).contains(StoredEnergy.SPRING) || job.seatsSpring(joint)) {
            lines.add("Spring ends in their seats before it takes load: a misplaced end jumps later.");
        }
        return lines;
    }

    List<String> tighten(Joint joint, Fastener back) {
        List<String> lines = new ArrayList<>();
        for (String doubt : Doubts.of(back)) {
            lines.add(doubt.equals(Doubts.ofTorque(back)) ? WRONG_TORQUE + doubt : "Doubtful: " + doubt);
        }
        if (back.tightening() instanceof Tightening.Unknown) {
            lines.add(UNKNOWN);
        }
        if (turnsRod(joint, back)) {
            lines.add(ROD);
        } else if (joint.fastener().critical() || job.holdsWheel(joint)) {
            lines.add(IMPACT);
        }
        boolean figure = !(back.tightening() instanceof Tightening.Unknown) && back.tightening() != Tightening.SNUG;
        if (figure && joint.entry().kind() == JointKind.BOLT_NUT) {
            lines.add(SAME_SIDE);
        }
        return lines;
    }

    List<String> release(String aid) {
        return Job.isCompressor(aid)
                ? List.of("Wind it off evenly, both ends in their seats, face out of the spring's line.")
                : List.of();
    }
}
