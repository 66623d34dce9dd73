package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.TreeMap;
import putback.plan.access.Numbers;
import putback.plan.access.Ties;
import putback.plan.order.Move;
import putback.quantity.Minutes;
import putback.sheet.Aside;
import putback.sheet.Fastener;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Letting;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.Station;

/** Puts the car together again: few changes of height, then few of side, station and tool. */
final class WayTogether {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final Charges charges;
    private final Cautions cautions;
    private final Standing standing;
    private final BitSet letDown;
    private final BitSet movedAside;
    /** Moved aside and not brought back. */
    private final BitSet stillAside;
    /** Not started yet. */
    private final BitSet open;
    /** Started, but not able to bear yet: threaded and not run down. */
    private final BitSet loose = new BitSet();
    /** Able to lose its aid: tight, or run down where it is tightened under load. */
    private final BitSet secured = new BitSet();

    private final TreeMap<Integer, Integer> turn = new TreeMap<>();

    WayTogether(Job job, StepLog log, AidsOn aids, Charges charges, WayApart apart) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.charges = charges;
        this.cautions = new Cautions(job);
        this.standing = new Standing(job);
        this.letDown = (BitSet) apart.letDown().clone();
        this.movedAside = (BitSet) apart.movedAside().clone();
        this.stillAside = (BitSet) apart.movedAside().clone();
        this.open = (BitSet) job.opened.clone();
        for (int i = 0; i < job.moves.size(); i++) {
            if (job.moves.get(i) instanceof Move.Open one) {
                turn.put(one.joint(), i);
            }
        }
    }

    void run() {
        ClosingOrder order = new ClosingOrder(job, log);
        HeightPlan.Found found = heights(order);
        BitSet done = new BitSet();
        doAll(order.graph(), done);
        for (Height height : found.heights()) {
            stand(height);
            doAll(order.graph(), done);
        }
        doTheRest(order.graph(), done);
    }

    private HeightPlan.Found heights(ClosingOrder order) {
        HeightPlan.Found found = new HeightPlan(order.graph(), order.wheels(), true).from(log.height());
        while (!found.complete() && order.relent(found.done())) {
            found = new HeightPlan(order.graph(), order.wheels(), true).from(log.height());
        }
        if (!found.complete()) {
            log.warn("Weight comes on the wheels before " + Words.list(missing(order.graph(), found.done()))
                    + ": look at the heights in the sheet.");
            found = new HeightPlan(order.graph(), order.wheels(), false).from(log.height());
        }
        return found;
    }

    private static List<String> missing(TaskGraph graph, BitSet done) {
        List<String> names = new ArrayList<>();
        for (int i = done.nextClearBit(0); i < graph.size(); i = done.nextClearBit(i + 1)) {
            Joint joint = graph.task(i).joint();
            if (joint != null && graph.task(i).kind() == Task.Kind.START) {
                names.add(Words.of(joint) + " is started");
            }
        }
        return names.isEmpty() ? List.of("all is closed") : names;
    }

    /** Only where a sheet contradicts itself beyond help: the way apart backwards. */
    private void doTheRest(TaskGraph graph, BitSet done) {
        List<Integer> rest = new ArrayList<>();
        for (int i = done.nextClearBit(0); i < graph.size(); i = done.nextClearBit(i + 1)) {
            rest.add(i);
        }
        if (rest.size() > 1) {
            // the sort is stable: equals stay in the order of their numbers
            rest.sort((a, b) -> Integer.compare(position(graph.task(b)), position(graph.task(a))));
        }
        for (int i : rest) {
            Task task = graph.task(i);
            if (task.height() != Height.ANY && task.height() != log.height()) {
                stand(task.height());
            }
            perform(task);
        }
        if (log.height() != Height.ON_WHEELS) {
            stand(Height.ON_WHEELS);
        }
    }

    private void doAll(TaskGraph graph, BitSet done) {
        int next = next(graph, done);
        while (next >= 0) {
            perform(graph.task(next));
            done.set(next);
            next = next(graph, done);
        }
    }

    private int next(TaskGraph graph, BitSet done) {
        int best = -1;
        for (int i = 0; i < graph.size(); i++) {
            if (graph.isReady(i, done, log.height())
                    && (best < 0 || cheapestFirst(graph.task(i), graph.task(best)) < 0)) {
                best = i;
            }
        }
        return best;
    }

    private int cheapestFirst(Task a, Task b) {
        int order = Integer.compare(a.kind().rank(), b.kind().rank());
        order = order == 0 ? setup(a).compareTo(setup(b)) : order;
        order = order == 0 ? a.kind().compareTo(b.kind()) : order;
        order = order == 0 ? Integer.compare(position(b), position(a)) : order;
        return order == 0 ? Boolean.compare(isCritical(b), isCritical(a)) : order;
    }

    private static boolean isCritical(Task task) {
        FollowUp followUp = task.followUp();
        return followUp != null && followUp.critical();
    }

    private int position(Task task) {
        Joint joint = task.joint();
        Integer at = joint == null ? null : turn.get(joint.index());
        return at == null ? -1 : at;
    }

    private Minutes setup(Task task) {
        Joint joint = task.joint();
        if (joint == null) {
            Side side = task.part() < 0 ? Side.NONE : job.part(task.part()).side();
            return log.setup(null, side, "");
        }
        boolean byHand = task.kind() == Task.Kind.START && job.threaded(joint) || task.kind() == Task.Kind.SECOND_LOOK;
        String key = byHand ? "" : ToolText.key(joint, job.back(joint));
        return log.setup(joint.entry().station(), joint.side(), key);
    }

    private void stand(Height height) {
        if (height == Height.ON_WHEELS) {
            for (AidsOn.On aid : aids.all()) {
                log.warn("The " + aid.name + " at " + Words.the(aid.part) + " is still on when the weight comes on.");
            }
        }
        boolean wheelOff = wheelIsOff();
        log.stand(height, standing.step(log.height(), height, wheelOff));
    }

    private boolean wheelIsOff() {
        Ties ties = job.ties(open);
        for (Part part : job.assembly.parts()) {
            if (Job.isWheel(part) && ties.off(part.index())) {
                return true;
            }
        }
        return false;
    }

    private void perform(Task task) {
        Joint joint = task.joint();
        FollowUp followUp = task.followUp();
        if (joint != null) {
            close(task.kind(), joint, job.back(joint));
        } else if (followUp != null) {
            log.add(Draft.of(Act.FOLLOW_UP, followUp.name() + ".")
                    .followUp(followUp)
                    .minutes(followUp.minutes()));
        } else if (task.part() >= 0) {
            bringBack(job.part(task.part()));
        }
        releaseWhatIsDone();
    }

    private void close(Task.Kind kind, Joint joint, Fastener back) {
        switch (kind) {
            case START -> start(joint, back);
            case RUN_DOWN -> runDown(joint, back);
            case TIGHTEN -> tighten(joint, back);
            default -> secondLook(joint, back);
        }
    }

    private void start(Joint joint, Fastener back) {
        List<String> cleaning = joint.entry().wording().beforeClosing();
        if (!cleaning.isEmpty()) {
            log.add(Draft.at(
                    Act.CLEAN, joint, "Before closing " + Words.of(joint) + ": " + String.join("; ", cleaning) + "."));
        }
        offerUp(joint);
        for (Letting letting : joint.letsGo()) {
            prepareAid(joint, letting);
        }
        Draft draft = Draft.at(Act.START, joint, UndoText.start(joint, back))
                .minutes(charges.start(joint))
                .caution(cautions.start(joint, back));
        log.add(job.threaded(joint) ? draft.byHand(back).caution(leftHand(back)) : draft.turning(joint, back));
        open.clear(joint.index());
        loose.set(joint.index(), job.threaded(joint));
        secured.set(joint.index(), !job.threaded(joint));
    }

    private static List<String> leftHand(Fastener back) {
        return back.leftHanded() ? List.of("Left-hand thread: it goes on anticlockwise.") : List.of();
    }

    private void prepareAid(Joint joint, Letting letting) {
        Part part = job.part(letting.part());
        if (letDown.get(part.index()) && letting.letDown()) {
            letDown.clear(part.index());
            log.add(Draft.with(
                            Act.JACK_UP,
                            part,
                            "Raise " + Words.the(part) + " on its " + letting.aid() + ", ready for " + Words.of(joint)
                                    + ".")
                    .aid(letting.aid()));
        }
        boolean newSpring = Job.isCompressor(letting) && job.renewal.renews(part.index());
        if (newSpring && aids.find(part.index(), letting.aid()) == null) {
            log.add(Draft.with(Act.SUPPORT, part, AidText.onNew(part, letting.aid(), joint))
                    .aid(letting.aid())
                    .caution(cautions.support(part, letting.aid(), open)));
            AidsOn.On on = aids.putOn(part, letting.aid());
            for (int other : Numbers.in(job.opened)) {
                on.askers.set(other, on.askers.get(other) || asksFor(other, part, letting.aid()));
            }
        }
    }

    private boolean asksFor(int joint, Part part, String aid) {
        for (Letting asked : job.joint(joint).letsGo()) {
            if (asked.part() == part.index() && asked.aid().equals(aid)) {
                return true;
            }
        }
        return false;
    }

    /** Brings up what this joint is the first to tie. */
    private void offerUp(Joint joint) {
        Ties ties = job.ties(open);
        List<BitSet> pieces = new ArrayList<>();
        boolean onCar = false;
        for (int part : joint.joins()) {
            if (!ties.off(part)) {
                onCar = true;
            } else if (!isInOne(pieces, part)) {
                pieces.add(tiedTo(part, ties));
            }
        }
        if (!onCar && !pieces.isEmpty()) {
            pieces.remove(base(pieces));
        }
        for (BitSet piece : pieces) {
            offerUp(piece, joint, onCar);
        }
    }

    private static boolean isInOne(List<BitSet> pieces, int part) {
        for (BitSet piece : pieces) {
            if (piece.get(part)) {
                return true;
            }
        }
        return false;
    }

    private BitSet tiedTo(int part, Ties ties) {
        BitSet piece = new BitSet();
        for (int other = 1; other < job.network.parts(); other++) {
            piece.set(other, ties.tied(part, other));
        }
        return piece;
    }

    /** The piece that the others are put on: the largest, the first among equals. */
    private static BitSet base(List<BitSet> pieces) {
        BitSet base = pieces.get(0);
        for (BitSet piece : pieces) {
            base = piece.cardinality() > base.cardinality() ? piece : base;
        }
        return base;
    }

    private void offerUp(BitSet piece, Joint joint, boolean onCar) {
        Part named = GroupText.named(job, piece, joint);
        List<Part> others = new ArrayList<>();
        for (int part = piece.nextSetBit(0); part >= 0; part = piece.nextSetBit(part + 1)) {
            if (part != named.index()) {
                others.add(job.part(part));
            }
        }
        String what = GroupText.of(job, piece, named, others, true);
        String text = onCar ? "Offer up " + what + "." : "Put " + what + " in place.";
        boolean bench = !onCar && joint.entry().station() == Station.BENCH;
        Minutes minutes = onCar ? charges.back(piece).plus(asidesOf(piece)) : Minutes.ZERO;
        Draft draft =
                bench ? Draft.withAt(Act.OFFER_UP, named, Station.BENCH, text) : Draft.with(Act.OFFER_UP, named, text);
        log.add(draft.together(others).minutes(minutes));
        if (onCar) {
            keepAside(piece);
        }
    }

    private Minutes asidesOf(BitSet piece) {
        Minutes sum = Minutes.ZERO;
        for (int part = piece.nextSetBit(0); part >= 0; part = piece.nextSetBit(part + 1)) {
            sum = movedAside.get(part) ? sum.plus(charges.asideBack(part)) : sum;
        }
        return sum;
    }

    /** What goes on again while it has to stay aside is kept there. */
    private void keepAside(BitSet piece) {
        for (int part = piece.nextSetBit(0); part >= 0; part = piece.nextSetBit(part + 1)) {
            Aside aside = job.part(part).entry().aside();
            String aid = aside == null ? null : aside.aid();
            if (stillAside.get(part) && aid != null && aids.find(part, aid) == null) {
                String text = "Keep " + Words.the(job.part(part)) + " aside with " + Words.an(aid) + " for now.";
                log.add(Draft.with(Act.SUPPORT, job.part(part), text).aid(aid));
                aids.putOn(job.part(part), aid).holdsAside = true;
            }
        }
    }

    private void bringBack(Part part) {
        stillAside.clear(part.index());
        if (job.ties(open).off(part.index())) {
            return;
        }
        log.add(Draft.with(Act.OFFER_UP, part, "Bring " + Words.the(part) + " back to its place.")
                .minutes(charges.asideBack(part.index())));
        for (AidsOn.On aid : aids.all()) {
            aid.holdsAside &= aid.part.index() != part.index();
        }
    }

    private void runDown(Joint joint, Fastener back) {
        String later = job.tightenedUnderLoad(joint)
                ? Words.they(back, "; it is", "; they are") + " tightened " + underLoad(joint) + "."
                : ", no tighter yet.";
        String touches = Words.they(back, " until it touches", " until they touch");
        log.add(Draft.at(Act.RUN_DOWN, joint, "Run down " + Words.of(joint) + touches + later)
                .turning(joint, back)
                .minutes(Charges.runDown(joint)));
        loose.clear(joint.index());
        secured.set(joint.index(), job.tightenedUnderLoad(joint));
    }

    private String underLoad(Joint joint) {
        return job.tightenHeight(joint) == Height.RIDE_HEIGHT ? "at ride height" : "on wheels";
    }

    private void tighten(Joint joint, Fastener back) {
        String mark = joint.fastener().critical() ? Words.they(back, " Paint-mark it.", " Paint-mark them.") : "";
        log.add(Draft.at(Act.TIGHTEN, joint, "Tighten " + Words.of(joint) + ": " + Words.tightness(back) + "." + mark)
                .turning(joint, back)
                .minutes(charges.tighten(joint))
                .stages(Stages.of(back))
                .caution(leftHand(back))
                .caution(cautions.tighten(joint, back)));
        secured.set(joint.index());
    }

    private void secondLook(Joint joint, Fastener back) {
        Draft draft = Draft.at(
                Act.SECOND_LOOK,
                joint,
                "Second look at " + Words.of(joint) + ": by another person, or ten minutes later with fresh light.");
        draft.fastener = back;
        log.add(draft);
    }

    private void releaseWhatIsDone() {
        for (AidsOn.On aid : aids.all()) {
            if (isDone(aid)) {
                release(aid);
            }
        }
    }

    private boolean isDone(AidsOn.On aid) {
        BitSet waiting = (BitSet) aid.askers.clone();
        waiting.andNot(secured);
        if (!waiting.isEmpty() || aid.holdsAside) {
            return false;
        }
        BitSet unsafe = (BitSet) open.clone();
        unsafe.or(loose);
        boolean asideOpen = movedAside.get(aid.part.index())
                && Numbers.anyIn(job.part(aid.part.index()).asideOpens(), unsafe);
        if (asideOpen || Job.isCompressor(aid.name)) {
            return !asideOpen;
        }
        return isHeldAgain(aid, unsafe) || !aid.carriesGroup && isHeldByAnother(aid, unsafe);
    }

    /** Held to the car; or, where it hangs on a whole car too, with all its own joints closed. */
    private boolean isHeldAgain(AidsOn.On aid, BitSet unsafe) {
        if (!job.hangsAlways(aid.part.index())) {
            return job.ties(unsafe).heldToBody(aid.part.index());
        }
        BitSet group = (BitSet) aid.pays.clone();
        group.set(aid.part.index());
        for (int joint : Numbers.in(unsafe)) {
            if (Numbers.anyIn(job.joint(joint).joins(), group)) {
                return false;
            }
        }
        return true;
    }

    /** Whether something else holds up what it hangs in one piece with. */
    private boolean isHeldByAnother(AidsOn.On aid, BitSet unsafe) {
        Ties ties = job.ties(unsafe);
        for (AidsOn.On other : aids.all()) {
            if (other != aid
                    && !Job.isCompressor(other.name)
                    && ties.heldTogether(other.part.index(), aid.part.index())) {
                return true;
            }
        }
        return false;
    }

    private void release(AidsOn.On aid) {
        aids.takeOff(aid);
        log.add(Draft.with(Act.RELEASE, aid.part, AidText.off(aid.part, aid.name))
                .aid(aid.name)
                .minutes(charges.back(aid.pays))
                .caution(cautions.release(aid.name)));
    }
}
