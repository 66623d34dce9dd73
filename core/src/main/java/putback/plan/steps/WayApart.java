package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Numbers;
import putback.plan.access.Ties;
import putback.plan.order.Move;
import putback.quantity.Minutes;
import putback.sheet.Aside;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.JointEntry;
import putback.sheet.JointKind;
import putback.sheet.Letting;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.StoredEnergy;

/** Takes the car apart, one move after the other. */
final class WayApart {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final Charges charges;
    private final Cautions cautions;
    private final Standing standing;
    private final Pivots pivots;
    private final BitSet open = new BitSet();
    private final BitSet loosened = new BitSet();
    private final BitSet movedAside = new BitSet();
    private final BitSet letDown = new BitSet();
    private final BitSet announcedHung = new BitSet();
    private Ties ties;

    WayApart(Job job, StepLog log, AidsOn aids, Charges charges) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.charges = charges;
        this.cautions = new Cautions(job);
        this.standing = new Standing(job);
        this.pivots = new Pivots(job.network);
        this.ties = job.ties(open);
    }

    /** Parts let down on a jack and not raised again. */
    BitSet letDown() {
        return letDown;
    }

    BitSet movedAside() {
        return movedAside;
    }

    void run() {
        loosenWhatIsReached(true);
        for (int i = 0; i < job.moves.size(); i++) {
            if (i == job.early) {
                loosenTheRest();
            }
            Move move = job.moves.get(i);
            if (move instanceof Move.Open one) {
                undo(job.joint(one.joint()), movedAsideNext(i + 1));
                asidesThatMovesForget();
            } else if (move instanceof Move.MoveAside one) {
                moveAside(job.part(one.part()));
            }
            loosenWhatIsReached(i < job.early);
        }
    }

    private void loosenWhatIsReached(boolean onWheels) {
        for (Joint joint : toLoosen()) {
            if (onWheels && job.reach.isClear(joint, joint.reachOnWheels(), open, movedAside)) {
                loosen(joint);
            }
        }
    }

    private void loosenTheRest() {
        for (Joint joint : toLoosen()) {
            List<Part> blockers = job.parts(job.reach.blockers(joint, joint.reachOnWheels(), open, movedAside));
            log.warn(joint.name() + " is to be broken loose on wheels, but "
                    + Words.the(blockers)
                    + (blockers.size() == 1 ? " is in the way and comes" : " are in the way and come")
                    + " off only when the car is raised.");
            loosen(joint);
        }
    }

    /** In the order in which they are opened. */
    private List<Joint> toLoosen() {
        List<Joint> joints = new ArrayList<>();
        for (Move move : job.moves) {
            if (move instanceof Move.Open one) {
                Joint joint = job.joint(one.joint());
                if (joint.entry().breakLooseOnWheels() && !loosened.get(joint.index()) && !open.get(joint.index())) {
                    joints.add(joint);
                }
            }
        }
        return joints;
    }

    private void loosen(Joint joint) {
        loosened.set(joint.index());
        stand(Height.ON_WHEELS);
        beforeOpening(joint);
        log.add(Draft.at(
                        Act.BREAK_LOOSE,
                        joint,
                        "Break loose " + Words.of(joint) + " with the car on its wheels: half a turn, no more.")
                .turning(joint, joint.fastener())
                .minutes(Charges.loosen(joint))
                .caution(leftHand(joint)));
    }

    private static List<String> leftHand(Joint joint) {
        return joint.fastener().leftHanded() ? List.of("Left-hand thread: it comes loose clockwise.") : List.of();
    }

    private void stand(Height height) {
        if (height != Height.ANY && height != log.height()) {
            log.stand(height, standing.step(log.height(), height, wheelIsOff()));
            if (height == Height.ON_WHEELS && wheelIsOff()) {
                log.warn("The plan sets the car on its wheels while one is off: look at the heights in the sheet.");
            }
        }
    }

    private boolean wheelIsOff() {
        for (Part part : job.assembly.parts()) {
            if (Job.isWheel(part) && ties.off(part.index())) {
                return true;
            }
        }
        return false;
    }

    private void beforeOpening(Joint joint) {
        List<String> items = joint.entry().wording().beforeOpening();
        if (!items.isEmpty()) {
            String text = "Before opening " + Words.of(joint) + ": " + String.join("; ", items) + ".";
            log.add(Draft.at(Act.CHECK, joint, text).caution(cautions.beforeOpening(text)));
        }
    }

    private void undo(Joint joint, BitSet asideNext) {
        JointEntry entry = joint.entry();
        if (entry.breakLooseOnWheels() && !loosened.get(joint.index())) {
            loosen(joint);
        }
        stand(Job.heightOf(joint));
        if (!loosened.get(joint.index())) {
            beforeOpening(joint);
        }
        if (!entry.wording().marks().isEmpty()) {
            log.add(Draft.at(
                    Act.MARK,
                    joint,
                    "Before opening " + Words.of(joint) + ": "
                            + String.join("; ", entry.wording().marks()) + "."));
        }
        for (Letting letting : joint.letsGo()) {
            support(joint, letting);
        }
        supportWhatFlops(joint, asideNext);
        Draft undo = Draft.at(Act.UNDO, joint, UndoText.of(joint))
                .turning(joint, joint.fastener())
                .minutes(Charges.undo(joint))
                .caution(leftHand(joint))
                .caution(cautions.undo(joint, open));
        log.add(undo);
        Ties before = ties;
        open.set(joint.index());
        ties = job.ties(open);
        if (!entry.wording().look().isEmpty()) {
            log.add(Draft.at(
                    Act.LOOK,
                    joint,
                    "While it is in sight, look at "
                            + Words.list(entry.wording().look()) + "."));
        }
        for (Letting letting : joint.letsGo()) {
            letDown(letting, before);
        }
        takeOff(joint, before);
        tieUp(joint, asideNext);
        if (joint.entry().kind() == JointKind.SEAT) {
            warnOfBareSpring(joint);
        }
    }

    private void support(Joint joint, Letting letting) {
        AidsOn.On same = aids.find(letting.part(), letting.aid());
        AidsOn.On there = same != null ? same : tiedAlready(joint, letting);
        if (there != null) {
            there.askers.set(joint.index());
            return;
        }
        if (Job.isSpared(letting.aid()) && ties.off(letting.part())) {
            return;
        }
        Part part = job.part(letting.part());
        putOn(part, letting.aid(), AidText.on(part, letting.aid(), joint), List.of())
                .askers
                .set(joint.index());
    }

    private AidsOn.On putOn(Part part, String aid, String text, List<String> lines) {
        log.add(Draft.with(Act.SUPPORT, part, text).aid(aid).caution(lines).caution(cautions.support(part, aid, open)));
        return aids.putOn(part, aid);
    }

    /**
     * A strap or jack that holds the part, or the hanging group to which it belongs before and after the joint is opened;
     * a strap does not do for a jack.
     */
    private AidsOn.@Nullable On tiedAlready(Joint joint, Letting letting) {
        if (!Job.isSpared(letting.aid())) {
            return null;
        }
        BitSet held = new BitSet();
        held.set(letting.part());
        if (ties.hung(letting.part())) {
            BitSet opened = (BitSet) open.clone();
            opened.set(joint.index());
            Ties after = job.ties(opened);
            for (int other : Numbers.in(hangingWith(letting.part()))) {
                if (after.heldTogether(other, letting.part())) {
                    held.set(other);
                }
            }
        }
        AidsOn.On there = aids.holding(held);
        return there != null && Job.isJack(letting.aid()) && !Job.isJack(there.name) ? null : there;
    }

    private BitSet hangingWith(int part) {
        BitSet group = new BitSet();
        for (int other = 1; other < job.network.parts(); other++) {
            if (other == part || ties.hung(other) && ties.heldTogether(part, other)) {
                group.set(other);
            }
        }
        return group;
    }

    private void supportWhatFlops(Joint joint, BitSet asideNext) {
        BitSet after = (BitSet) open.clone();
        after.set(joint.index());
        for (BitSet group : pivots.flopping(after)) {
            if (aids.holding(group) != null || group.intersects(asideNext)) {
                continue;
            }
            Part part = job.part(firstIn(group, joint));
            String text = "Tie up " + Words.the(part) + " with a strap before opening " + Words.of(joint) + ".";
            putOn(part, AidText.STRAP, text, List.of("The sheet names no aid here: left on its pivots it flops over."))
                    .askers
                    .set(joint.index());
            log.warn("With " + Words.of(joint) + " open, " + Words.the(part)
                    + " is held by pivots only, and the sheet names no aid for it: a strap was put in.");
        }
    }

    /** The part of the group that the joint names first; any where it names none. */
    private static int firstIn(BitSet group, Joint joint) {
        for (int part : joint.joins()) {
            if (group.get(part)) {
                return part;
            }
        }
        return group.nextSetBit(0);
    }

    /** Only once the last joint that holds it up is open: what is still bolted would carry the part and the spring. */
    private void letDown(Letting letting, Ties before) {
        int index = letting.part();
        AidsOn.On jack = aids.find(index, letting.aid());
        boolean due = letting.letDown() && !isAskedAgain(letting);
        if (due && jack != null && !letDown.get(index) && !before.off(index)) {
            letDown.set(index);
            Part part = job.part(index);
            log.add(Draft.with(
                            Act.LET_DOWN, part, "Let " + Words.the(part) + " down slowly on its " + letting.aid() + ".")
                    .aid(letting.aid())
                    .caution(cautions.tethers(List.of(part), open)));
        }
    }

    /** Whether another joint, not open yet, lets the same part down. */
    private boolean isAskedAgain(Letting letting) {
        for (int joint : Numbers.in(job.opened)) {
            if (!open.get(joint) && job.joint(joint).letsGo().contains(letting)) {
                return true;
            }
        }
        return false;
    }

    private void takeOff(Joint joint, Ties before) {
        BitSet left = new BitSet();
        for (int part = 1; part < job.network.parts(); part++) {
            left.set(part, ties.off(part) && !before.off(part));
        }
        while (!left.isEmpty()) {
            BitSet group = tiedTo(left.nextSetBit(0), left);
            left.andNot(group);
            releaseGroupStraps(group);
            Part named = named(group, joint);
            List<Part> others = others(group, named);
            String text = "Take off " + GroupText.of(job, group, named, others, false) + ".";
            log.add(Draft.with(Act.TAKE_OFF, named, text)
                    .together(others)
                    .minutes(charges.out(group, job.off))
                    .caution(heavy(group)));
        }
    }

    private List<String> heavy(BitSet group) {
        List<String> lines = new ArrayList<>();
        for (Part part : job.heavy()) {
            if (group.get(part.index())) {
                lines.add("The weight of the car shifts as " + Words.the(part)
                        + " leaves: second support in place first.");
            }
        }
        return lines;
    }

    private BitSet tiedTo(int first, BitSet among) {
        BitSet group = new BitSet();
        for (int part = among.nextSetBit(0); part >= 0; part = among.nextSetBit(part + 1)) {
            group.set(part, ties.tied(first, part));
        }
        return group;
    }

    /** A strap that only carried what hung, or what was aside, comes off with it. */
    private void releaseGroupStraps(BitSet group) {
        for (AidsOn.On aid : aids.all()) {
            aid.holdsAside &= !group.get(aid.part.index());
            if (group.get(aid.part.index()) && aid.askers.isEmpty() && !Job.isCompressor(aid.name)) {
                aids.takeOff(aid);
                log.add(Draft.with(Act.RELEASE, aid.part, AidText.off(aid.part, aid.name))
                        .aid(aid.name));
            }
        }
    }

    private Part named(BitSet group, Joint joint) {
        return GroupText.named(job, group, joint);
    }

    private List<Part> others(BitSet group, Part named) {
        BitSet others = (BitSet) group.clone();
        others.clear(named.index());
        return all(others);
    }

    /** Ties up what hangs and is not tied yet. */
    private void tieUp(Joint joint, BitSet asideNext) {
        BitSet hanging = new BitSet();
        for (int part = 1; part < job.network.parts(); part++) {
            hanging.set(part, ties.hung(part));
        }
        while (!hanging.isEmpty()) {
            BitSet group = hangingWith(firstRigid(hanging));
            group.and(hanging);
            hanging.andNot(group);
            if (!group.intersects(asideNext)) {
                tieUp(group, joint);
            }
        }
    }

    /** The first that is no tether; the first of all where there is none. */
    private int firstRigid(BitSet parts) {
        for (int part = parts.nextSetBit(0); part >= 0; part = parts.nextSetBit(part + 1)) {
            if (!job.network.isTether(part)) {
                return part;
            }
        }
        return parts.nextSetBit(0);
    }

    private void tieUp(BitSet group, Joint joint) {
        AidsOn.On there = aids.holding(group);
        BitSet fresh = (BitSet) group.clone();
        fresh.andNot(announcedHung);
        boolean isNew = !fresh.isEmpty();
        if (there != null && !isNew) {
            return;
        }
        Part part = there != null ? there.part : hangingPart(group, joint);
        AidsOn.On aid = there != null ? there : aids.putOn(part, AidText.STRAP);
        List<Part> others = others(group, part);
        String text = there != null
                ? Words.high(Words.the(part)) + " hangs now" + Words.inOnePiece(others, part) + ": see that the "
                        + aid.name + " carries it."
                : "Tie up " + Words.the(part) + Words.inOnePiece(others, part) + ", with a strap.";
        carry(aid, group);
        log.add(Draft.with(Act.ASIDE, part, text)
                .together(others)
                .aid(aid.name)
                .minutes(charges.out(group, job.hung))
                .caution(cautions.tethers(all(group), open)));
    }

    private void carry(AidsOn.On aid, BitSet group) {
        announcedHung.or(group);
        aid.carriesGroup = true;
        aid.pays.or(group);
    }

    private List<Part> all(BitSet group) {
        List<Part> parts = new ArrayList<>();
        for (int part = group.nextSetBit(0); part >= 0; part = group.nextSetBit(part + 1)) {
            parts.add(job.part(part));
        }
        return parts;
    }

    private Part hangingPart(BitSet group, Joint joint) {
        for (int part : joint.joins()) {
            if (group.get(part) && !job.network.isTether(part)) {
                return job.part(part);
            }
        }
        return job.part(firstRigid(group));
    }

    /** Parts that the plan moves aside, with an aid, before the next joint is opened. */
    private BitSet movedAsideNext(int from) {
        BitSet next = new BitSet();
        for (int i = from; i < job.moves.size() && job.moves.get(i) instanceof Move.MoveAside one; i++) {
            Aside aside = job.part(one.part()).entry().aside();
            next.set(one.part(), aside != null && aside.aid() != null);
        }
        return next;
    }

    private void moveAside(Part part) {
        Aside aside = part.entry().aside();
        if (aside == null || movedAside.get(part.index())) {
            return;
        }
        movedAside.set(part.index());
        boolean hangs = ties.hung(part.index());
        BitSet group = hangs ? hangingWith(part.index()) : new BitSet();
        List<Part> others = others(group, part);
        String aid = ties.off(part.index()) ? null : aside.aid();
        if (aid != null) {
            AidsOn.On on = aids.putOn(part, aid);
            on.holdsAside = true;
            if (hangs) {
                carry(on, group);
            }
        }
        String how = aid == null ? "" : " and keep it there with " + Words.an(aid);
        log.add(Draft.with(
                        Act.ASIDE,
                        part,
                        "Move " + Words.the(part) + Words.inOnePiece(others, part) + " aside" + how + ".")
                .together(others)
                .aid(aid)
                .minutes(charges.asideOut(part.index()).plus(aid == null ? Minutes.ZERO : charges.out(group, job.hung)))
                .caution(cautions.tethers(List.of(part), open)));
    }

    /** An aside of the selection that no move names is used as soon as it can be. */
    private void asidesThatMovesForget() {
        for (int index : job.selection.aside()) {
            boolean named = job.moves.contains(new Move.MoveAside(index));
            if (!named && Numbers.allIn(job.part(index).asideOpens(), open)) {
                moveAside(job.part(index));
            }
        }
    }

    private void warnOfBareSpring(Joint joint) {
        for (int index : joint.joins()) {
            Part part = job.part(index);
            boolean spring = part.entry().storedEnergy() == StoredEnergy.SPRING;
            if (spring && !isCompressed(part) && !isLetDownBeside(part)) {
                log.warn("The sheet names neither a compressor nor a jack that lets " + Words.the(part)
                        + " go slack before opening " + Words.of(joint) + ".");
            }
        }
    }

    private boolean isCompressed(Part spring) {
        for (AidsOn.On aid : aids.all()) {
            if (Job.isCompressor(aid.name) && aid.part.index() == spring.index()) {
                return true;
            }
        }
        return false;
    }

    /** Whether something on the side of the spring, or in the middle, is let down. */
    private boolean isLetDownBeside(Part spring) {
        for (int index : Numbers.in(letDown)) {
            Side side = job.part(index).side();
            if (side == spring.side() || side == Side.NONE) {
                return true;
            }
        }
        return false;
    }
}
