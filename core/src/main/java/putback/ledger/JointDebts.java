package putback.ledger;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.ledger.Debt.Kind;
import putback.quantity.Torque;
import putback.sheet.Height;

/** What one joint owes. */
final class JointDebts {
    private static final double NOISE = 1e-9;

    private final String joint;
    private final JointStory story;
    private final List<Debt> debts = new ArrayList<>();

    private JointDebts(String joint, JointStory story) {
        this.joint = joint;
        this.story = story;
    }

    /**
     * @param fixing null where the plan does not know the joint
     */
    static List<Debt> of(String joint, JointStory story, Promised.@Nullable Fixing fixing) {
        JointDebts all = new JointDebts(joint, story);
        if (story.isBroken()) {
            all.owe(Kind.BROKEN, "damaged, and no new fastener since");
        }
        if (story.isTouched()) {
            all.closed(fixing);
        }
        return all.debts;
    }

    private void closed(Promised.@Nullable Fixing fixing) {
        Event tightened = story.tightened();
        boolean threaded = fixing == null || fixing.threaded();
        if (story.isOpen()) {
            owe(Kind.NOT_STARTED, "open");
            return;
        }
        if (threaded && tightened == null) {
            owe(
                    Kind.NOT_TIGHTENED,
                    fixing == null
                            ? "closed by hand; the plan does not know it, so say that it is tight"
                            : story.isStarted() ? "on its thread, not tight" : "broken loose, not tight again");
        }
        if (fixing == null) {
            return;
        }
        if (fixing.newFastener() && !story.isReplaced() && story.isStarted()) {
            owe(Kind.FASTENER_REUSED, "single-use, and no new one is on record");
        }
        if (tightened != null) {
            tight(tightened, fixing);
        }
    }

    private void tight(Event tightened, Promised.Fixing fixing) {
        if (tightened.untorqued() == null || tightened.torqueNm() != null) {
            figures(tightened, fixing);
        }
        if (!suits(story.height(), fixing.height())) {
            Height at = story.height();
            owe(
                    Kind.WRONG_HEIGHT,
                    "to be tightened " + where(fixing.height()) + ", done "
                            + (at == null ? "at a height that nobody wrote down" : where(at)));
        }
        if (fixing.secondLook() && !story.isLookedAt()) {
            owe(Kind.SECOND_LOOK, "by another person, or by the same one ten minutes later");
        }
    }

    private void figures(Event tightened, Promised.Fixing fixing) {
        Double wanted = fixing.torqueNm();
        Double read = tightened.torqueNm();
        if (wanted != null && read == null) {
            owe(Kind.TORQUE_MISSING, new Torque(wanted).text() + " wanted, no reading");
        } else if (fixing.angleDeg() != null && tightened.angleDeg() == null) {
            owe(Kind.TORQUE_MISSING, "the angle is not ticked: " + Torque.figure(fixing.angleDeg()) + " deg");
        }
        if (wanted != null && read != null) {
            inside(read, fixing);
        }
    }

    private void inside(double read, Promised.Fixing fixing) {
        Double least = fixing.leastNm();
        Double most = fixing.mostNm();
        if (least != null && most != null && (read < least - NOISE || read > most + NOISE)) {
            owe(
                    Kind.TORQUE_OUTSIDE,
                    new Torque(read).text() + " read, " + Torque.windowText(new Torque(least), new Torque(most))
                            + " allowed");
        }
    }

    /** On wheels the car is at ride height too. */
    private static boolean suits(@Nullable Height done, Height wanted) {
        return wanted == Height.ANY
                || wanted == Height.RAISED
                || done == wanted
                || wanted == Height.RIDE_HEIGHT && done == Height.ON_WHEELS;
    }

    private static String where(Height height) {
        return height == Height.RIDE_HEIGHT ? "at ride height" : height.word();
    }

    private void owe(Kind kind, String detail) {
        debts.add(Debt.ofJoint(kind, joint, detail));
    }
}
