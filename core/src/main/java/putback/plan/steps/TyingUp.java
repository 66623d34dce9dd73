package putback.plan.steps;

import java.util.BitSet;
import java.util.List;
import putback.plan.access.Numbers;
import putback.plan.access.Ties;
import putback.plan.order.Move;
import putback.quantity.Minutes;
import putback.sheet.Aside;
import putback.sheet.Joint;
import putback.sheet.Part;

/** Ties up what hangs, and moves aside what may be moved aside. */
final class TyingUp {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final ApartScene scene;
    private final Charges charges;
    private final Cautions cautions;

    TyingUp(Job job, StepLog log, AidsOn aids, ApartScene scene, Charges charges, Cautions cautions) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.scene = scene;
        this.charges = charges;
        this.cautions = cautions;
    }

    /**
     * Ties up what hangs and is not tied yet.
     *
     * @param asideNext parts that get an aid of their own before the next joint is opened
     */
    void after(Joint joint, BitSet asideNext) {
        Ties ties = scene.ties();
        BitSet hanging = new BitSet();
        for (int part = 1; part < job.network.parts(); part++) {
            hanging.set(part, ties.hung(part));
        }
        while (!hanging.isEmpty()) {
            BitSet group = scene.hangingWith(firstRigid(hanging));
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
        fresh.andNot(scene.carried);
        if (there != null && fresh.isEmpty()) {
            return;
        }
        Part part = there != null ? there.part : hangingPart(group, joint);
        AidsOn.On aid = there != null ? there : aids.putOn(part, AidText.STRAP);
        List<Part> others = job.others(group, part);
        String text = there != null
                ? Words.high(Words.the(part)) + " hangs now" + Words.inOnePiece(others, part) + ": see that the "
                        + aid.name + " carries it."
                : "Tie up " + Words.the(part) + Words.inOnePiece(others, part) + ", with a strap.";
        carry(aid, group);
        log.add(Draft.with(Act.ASIDE, part, text)
                .together(others)
                .aid(aid.name)
                .minutes(charges.out(group, job.hung))
                .caution(cautions.tethers(job.parts(group), scene.open)));
    }

    private void carry(AidsOn.On aid, BitSet group) {
        scene.carried.or(group);
        aid.carriesGroup = true;
        aid.pays.or(group);
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
    BitSet movedAsideNext(int from) {
        BitSet next = new BitSet();
        for (int i = from; i < job.moves.size() && job.moves.get(i) instanceof Move.MoveAside one; i++) {
            Aside aside = job.part(one.part()).entry().aside();
            next.set(one.part(), aside != null && aside.aid() != null);
        }
        return next;
    }

    void moveAside(Part part) {
        Aside aside = part.entry().aside();
        if (aside == null || scene.movedAside.get(part.index())) {
            return;
        }
        scene.movedAside.set(part.index());
        boolean hangs = scene.ties().hung(part.index());
        BitSet group = hangs ? scene.hangingWith(part.index()) : new BitSet();
        List<Part> others = job.others(group, part);
        String aid = scene.ties().off(part.index()) ? null : aside.aid();
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
                .caution(cautions.tethers(List.of(part), scene.open)));
    }

    /** An aside of the selection that no move names is used as soon as it can be. */
    void asidesThatMovesForget() {
        for (int index : job.selection.aside()) {
            boolean named = job.moves.contains(new Move.MoveAside(index));
            if (!named && Numbers.allIn(job.part(index).asideOpens(), scene.open)) {
                moveAside(job.part(index));
            }
        }
    }
}
