package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Ties;
import putback.quantity.Minutes;
import putback.sheet.Aside;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Station;

/** Brings up what goes on again, and back what was moved aside. */
final class OfferingUp {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final TogetherScene scene;
    private final Charges charges;

    OfferingUp(Job job, StepLog log, AidsOn aids, TogetherScene scene, Charges charges) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.scene = scene;
        this.charges = charges;
    }

    /** What this joint is the first to tie. */
    void before(Joint joint) {
        Ties ties = scene.ties();
        List<BitSet> pieces = new ArrayList<>();
        boolean onCar = false;
        for (int part : joint.joins()) {
            if (!ties.off(part)) {
                onCar = true;
            } else if (!isIn(pieces, part)) {
                pieces.add(tiedTo(part, ties));
            }
        }
        String where = "";
        if (!onCar && !pieces.isEmpty()) {
            BitSet base = base(pieces);
            pieces.remove(base);
            where = " on " + Words.the(met(base, joint));
        }
        for (BitSet piece : pieces) {
            offerUp(piece, joint, where);
        }
    }

    private BitSet tiedTo(int part, Ties ties) {
        BitSet piece = new BitSet();
        for (int other = 1; other < job.network.parts(); other++) {
            piece.set(other, ties.tied(part, other));
        }
        return piece;
    }

    /** The piece that the others are put on: the one with the part that has the most fixings, the first among equals. */
    private BitSet base(List<BitSet> pieces) {
        BitSet base = pieces.get(0);
        for (BitSet piece : pieces) {
            base = fixings(piece) > fixings(base) ? piece : base;
        }
        return base;
    }

    private int fixings(BitSet piece) {
        int most = 0;
        for (int part = piece.nextSetBit(0); part >= 0; part = piece.nextSetBit(part + 1)) {
            most = Math.max(most, job.network.jointsOf(part).length);
        }
        return most;
    }

    /** The part of a piece that the joint joins. */
    private Part met(BitSet base, Joint joint) {
        for (int part : joint.joins()) {
            if (base.get(part)) {
                return job.part(part);
            }
        }
        return job.part(base.nextSetBit(0));
    }

    /**
     * @param where it is put, off the car; empty on the car
     */
    private void offerUp(BitSet piece, Joint joint, String where) {
        boolean onCar = where.isEmpty();
        Part named = GroupText.named(job, piece, joint);
        List<Part> others = job.others(piece, named);
        String what = GroupText.of(job, piece, named, others, true);
        String text = onCar
                ? "Offer up " + what + waiting(piece) + "."
                : "Put " + what + (what.contains(", in one piece") ? "," : "") + " in place" + where + ".";
        boolean bench = !onCar && joint.entry().station() == Station.BENCH;
        Minutes minutes = onCar ? charges.back(piece).plus(asidesOf(piece)) : Minutes.ZERO;
        Draft draft =
                bench ? Draft.withAt(Act.OFFER_UP, named, Station.BENCH, text) : Draft.with(Act.OFFER_UP, named, text);
        log.add(draft.together(others).minutes(minutes));
        if (onCar) {
            keepAside(piece);
        }
    }

    /** A strap or jack that waited while the part was off holds it again as it is offered up. */
    private String waiting(BitSet piece) {
        AidsOn.On aid = aids.holding(piece);
        return aid == null ? "" : ", held by its " + aid.name;
    }

    private Minutes asidesOf(BitSet piece) {
        Minutes sum = Minutes.ZERO;
        for (int part = piece.nextSetBit(0); part >= 0; part = piece.nextSetBit(part + 1)) {
            sum = scene.movedAside.get(part) ? sum.plus(charges.asideBack(part)) : sum;
        }
        return sum;
    }

    /** What goes on again while it has to stay aside is kept there. */
    private void keepAside(BitSet piece) {
        for (int part = piece.nextSetBit(0); part >= 0; part = piece.nextSetBit(part + 1)) {
            Aside aside = job.part(part).entry().aside();
            String aid = aside == null ? null : aside.aid();
            if (scene.stillAside.get(part) && aid != null) {
                if (aids.find(part, aid) == null) {
                    String text = "Keep " + Words.the(job.part(part)) + " aside with " + Words.an(aid) + " for now.";
                    log.add(Draft.with(Act.SUPPORT, job.part(part), text).aid(aid));
                }
                aids.putOn(job.part(part), aid).holdsAside = true;
            }
        }
    }

    void bringBack(Part part) {
        scene.stillAside.clear(part.index());
        if (scene.ties().off(part.index())) {
            return;
        }
        String text = "Bring " + Words.the(part) + " back to its place";
        for (AidsOn.On aid : aids.all()) {
            boolean own = aid.part.index() == part.index();
            aid.holdsAside &= !own;
            if (own && !Job.isJack(aid.name)) {
                text += ", the " + aid.name + " slack but on until it is bolted";
            }
        }
        log.add(Draft.with(Act.OFFER_UP, part, text + ".").minutes(charges.asideBack(part.index())));
    }

    private static boolean isIn(List<BitSet> pieces, int part) {
        for (BitSet piece : pieces) {
            if (piece.get(part)) {
                return true;
            }
        }
        return false;
    }
}
