package putback.tightening;

import java.util.ArrayList;
import java.util.List;
import putback.quantity.StatedTorque;
import putback.quantity.Torque;
import putback.quantity.TorqueUnit;

/**
 * Whether a stated torque can be right for its thread and class, and whether the same figure in another unit would be.
 *
 * @param verdict what it comes to
 * @param low torque that uses nine tenths of the yield stress at the least ordinary friction
 * @param high the same at the most
 * @param otherUnits in which the same figure would fit
 * @param reason one sentence for a person
 */
public record Plausibility(Verdict verdict, Torque low, Torque high, List<TorqueUnit> otherUnits, String reason) {
    /** What a comparison comes to. */
    public enum Verdict {
        /** It fits, and no other unit does. */
        FITS,
        /** It fits, and so does the same figure in another unit: the figure alone cannot tell. */
        CANNOT_TELL,
        /** It cannot be right. */
        WRONG
    }

    /**
     * What else is known of the torque.
     *
     * @param prevailing what a locking nut takes before it clamps, zero or more
     * @param beforeAngle whether an angle follows, so that the torque alone may be small
     * @param workedOut whether nobody stated it: it follows from a clamp load, and no other unit can be meant
     */
    public record Circumstance(Torque prevailing, boolean beforeAngle, boolean workedOut) {
        static final Circumstance PLAIN = new Circumstance(Torque.ZERO, false, false);
    }

    private static final double FULL_USE = 0.9;
    private static final double MIDDLE = 0.12;

    /** Below this share of the yield stress a figure in another unit that fits is the likelier one. */
    private static final double SLACK = 0.13;

    /** Below this share a fastener holds nothing. */
    private static final double FINGER_TIGHT = 0.03;

    /** A reading in another unit is offered only where it uses the fastener as ordinary figures do. */
    private static final double WELL_USED = 0.25;

    public Plausibility {
        otherUnits = List.copyOf(otherUnits);
    }

    /** Holds a stated torque against what the thread, the class and the friction allow. */
    public static Plausibility of(ScrewThread thread, PropertyClass grade, FrictionSpan span, StatedTorque stated) {
        return of(thread, grade, span, stated, Circumstance.PLAIN);
    }

    /** The same under circumstances that change what the torque means. */
    public static Plausibility of(
            ScrewThread thread, PropertyClass grade, FrictionSpan span, StatedTorque stated, Circumstance when) {
        Judge judge = new Judge(thread, grade.strength(thread), span, when.prevailing());
        Torque low = judge.torqueAt(FULL_USE, span.least());
        Torque high = judge.torqueAt(FULL_USE, span.most());
        List<TorqueUnit> fitting = new ArrayList<>();
        for (TorqueUnit unit : TorqueUnit.values()) {
            if (!when.workedOut() && unit != stated.unit() && judge.fits(stated.readAs(unit))) {
                fitting.add(unit);
            }
        }
        double share = judge.share(stated.torque());
        boolean tooMuch = judge.isTooMuch(stated.torque());
        boolean tooLittle = !when.beforeAngle() && (share < FINGER_TIGHT || (share < SLACK && !fitting.isEmpty()));
        Verdict verdict = tooMuch || tooLittle ? Verdict.WRONG : fitting.isEmpty() ? Verdict.FITS : Verdict.CANNOT_TELL;
        String what = thread.designation() + " of " + (grade.isSae() ? "" : "class ") + grade.mark();
        PlausibilityText text = new PlausibilityText(what, stated, low, high, fitting);
        String reason = tooMuch
                ? text.tooMuch()
                : tooLittle
                        ? text.tooLittle()
                        : stated.torque().newtonMetres() > high.newtonMetres() ? text.aboveUsual() : text.fits();
        return new Plausibility(verdict, low, high, fitting, reason);
    }

    /** Whether {@link #of} would let the torque stand, without a word about it: nearly all do. */
    public static boolean stands(ScrewThread thread, PropertyClass grade, FrictionSpan span, StatedTorque stated) {
        Judge judge = new Judge(thread, grade.strength(thread), span, Torque.ZERO);
        boolean clear = judge.share(stated.torque()) >= SLACK && !judge.isTooMuch(stated.torque());
        return clear || of(thread, grade, span, stated).isPlausible();
    }

    /** Whether the torque may stand. */
    public boolean isPlausible() {
        return verdict != Verdict.WRONG;
    }

    private record Judge(ScrewThread thread, Strength strength, FrictionSpan span, Torque prevailing) {
        /** Torque that uses a share of the yield stress at a friction. */
        Torque torqueAt(double use, double friction) {
            return law(friction).torque(Utilisation.clamp(thread, strength, friction, use), prevailing);
        }

        /** Share of the yield stress at the middle friction. */
        double share(Torque torque) {
            return torque.newtonMetres() <= prevailing.newtonMetres()
                    ? 0
                    : Utilisation.share(thread, strength, MIDDLE, law(MIDDLE).clamp(torque, prevailing));
        }

        boolean isTooMuch(Torque torque) {
            return torque.newtonMetres() > torqueAt(1, span.limit()).newtonMetres();
        }

        boolean fits(Torque torque) {
            return share(torque) >= WELL_USED
                    && torque.newtonMetres() <= torqueAt(1, span.most()).newtonMetres();
        }

        private TorqueLaw law(double friction) {
            return new TorqueLaw.ByFriction(thread, Friction.same(friction), BearingFace.usual(thread));
        }
    }
}
