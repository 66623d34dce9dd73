package putback.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import putback.ledger.Debt.Kind;
import putback.quantity.Torque;
import putback.sheet.Height;

/** What one joint owes. */
final class JointDebts {
    /** An angle may be a tenth off, as a torque may where nobody states its limits. */
    private static final double USUAL = 0.1;

    private static final String LOOK = "a second look by another person, or by the same one ten minutes later";

    private final String joint;
    private final JointStory story;
    private final List<Debt> debts = new ArrayList<>();

    private JointDebts(String joint, JointStory story) {
        this.joint = joint;
        this.story = story;
    }

    /**
     * @param due follow-ups that are still due
     */
    static List<Debt> of(String joint, JointStory story, Promised promised, Set<String> due) {
        JointDebts all = new JointDebts(joint, story);
        Fixing fixing = promised.joints().get(joint);
        if (story.isBroken()) {
            all.owe(Kind.BROKEN, "damaged, and no new fastener since");
        }
        if (fixing == null) {
            if (story.isOpenedOrLoosened()) {
                all.unknown();
            }
        } else if (story.isTouched()) {
            all.known(fixing, promised, due);
        }
        return all.debts;
    }

    /** Nobody can say whether it is tight enough, so that somebody else looks it up and looks at it. */
    private void unknown() {
        if (story.isOpen()) {
            owe(Kind.NOT_STARTED, open() + "; the plan does not know it");
        } else if (story.tightened() == null) {
            owe(
                    Kind.NOT_TIGHTENED,
                    "closed, and nobody says that it is tight; the plan does not know it, nor what torque it asks");
        } else if (!story.isLookedAt(true)) {
            owe(
                    Kind.SECOND_LOOK,
                    "the plan does not know it: what torque it asks and what follows from opening it has to be looked"
                            + " up; it wants " + LOOK);
        }
    }

    private void known(Fixing fixing, Promised promised, Set<String> due) {
        Event tightened = story.tightened();
        if (story.isOpen()) {
            owe(Kind.NOT_STARTED, open());
            return;
        }
        boolean loose = tightened == null && (fixing.threaded() || story.isLoosened() && !story.isStarted());
        if (loose) {
            owe(Kind.NOT_TIGHTENED, loose());
        }
        if (fixing.newFastener() && !story.isReplaced() && story.isOpenedOrLoosened() && story.isStarted()) {
            owe(Kind.FASTENER_REUSED, "single-use, and no new one is on record");
        }
        if (tightened != null && fixing.tight() != null) {
            tight(tightened, fixing.tight(), promised, due);
        }
        if (fixing.secondLook() && !loose && !story.isLookedAt(fixing.threaded())) {
            owe(Kind.SECOND_LOOK, "wants " + LOOK);
        }
    }

    private String open() {
        return story.isReplacedWhenTight() ? "has a new fastener that is not on its thread yet" : "still open";
    }

    private String loose() {
        if (!story.isStarted()) {
            return "broken loose, not tightened again";
        }
        return story.isRunDown() ? "run down, not tightened" : "on its thread, not tightened";
    }

    private void tight(Event tightened, PlanStep.Tight asked, Promised promised, Set<String> due) {
        for (String before : asked.after()) {
            if (story.wasOwedThen(before) && !due.contains(before)) {
                String work = promised.nameInside(before);
                owe(Kind.NOT_TIGHTENED, "tightened too early; this comes before it: " + work + ". Tighten it again");
                return;
            }
        }
        figures(tightened, asked);
        if (asked.height() != Height.RAISED && !Footing.fits(story.height(), asked.height())) {
            Height at = story.height();
            owe(
                    Kind.WRONG_HEIGHT,
                    "to be tightened " + Footing.where(asked.height()) + ", done "
                            + (at == null ? "at a height that nobody wrote down" : Footing.where(at)));
        }
    }

    private void figures(Event tightened, PlanStep.Tight asked) {
        Double wanted = asked.torqueNm();
        Double read = tightened.torqueNm();
        Double angle = asked.angleDeg();
        Double turned = tightened.angleDeg();
        boolean excused = tightened.untorqued() != null && read == null;
        if (wanted != null && read == null && !excused) {
            owe(Kind.TORQUE_MISSING, new Torque(wanted).text() + " wanted, no reading written down");
        } else if (angle != null && turned == null && !excused) {
            owe(Kind.TORQUE_MISSING, Torque.figure(angle) + " deg further wanted, not ticked");
        }
        Double least = asked.leastNm();
        Double most = asked.mostNm();
        if (read != null && least != null && most != null && Readings.isOutside(read, least, most)) {
            owe(Kind.TORQUE_OUTSIDE, Readings.torque(read, least, most));
        } else if (angle != null && turned != null) {
            turned(turned, angle);
        }
    }

    private void turned(double turned, double asked) {
        double least = (1 - USUAL) * asked;
        double most = (1 + USUAL) * asked;
        if (Readings.isOutside(turned, least, most)) {
            owe(Kind.TORQUE_OUTSIDE, Readings.angle(turned, least, most));
        }
    }

    private void owe(Kind kind, String detail) {
        debts.add(Debt.ofJoint(kind, joint, detail));
    }
}
