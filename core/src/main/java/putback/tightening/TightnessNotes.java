package putback.tightening;

import java.util.ArrayList;
import java.util.List;
import putback.quantity.Force;
import putback.quantity.Length;
import putback.quantity.Torque;

/** What belongs beside the figures of one fastener. */
final class TightnessNotes {
    private static final double NINE_EIGHT_LIMIT_MM = 16;

    private TightnessNotes() {}

    static List<String> of(Tightness answer) {
        List<String> notes = new ArrayList<>();
        Asked asked = answer.asked();
        boolean yields = answer.yieldUse() > 1;
        if (yields) {
            strength(answer, notes);
        }
        if (asked.goal() instanceof Asked.Goal.ByTorque
                || !answer.plausibility().isPlausible()) {
            notes.add(answer.plausibility().reason());
        }
        hexagon(asked, notes);
        if (!yields) {
            strength(answer, notes);
        }
        if (asked.angle() != null) {
            notes.add(angle(answer));
        }
        if (!yields) {
            scatter(answer, notes);
        }
        if (asked.prevailing().newtonMetres() > 0) {
            notes.add("What the locking nut takes is left out of the twist in the bolt.");
        }
        if (asked.nutFactor() == null) {
            notes.add("Reckoned with friction " + plain(asked.friction().thread()) + " in the thread and "
                    + plain(asked.friction().head()) + " under the head, for "
                    + asked.face().basis() + ".");
        }
        notes.add("The car maker's own figure, thread condition and hardware rule.");
        return notes;
    }

    private static void hexagon(Asked asked, List<String> notes) {
        Length hex = asked.hex();
        if (hex == null) {
            return;
        }
        notes.add(HexSizes.said(asked.thread(), hex));
    }

    private static void scatter(Tightness answer, List<String> notes) {
        notes.add("Friction decides more than the wrench: by torque wrench the clamp load may be "
                + kn(answer.clampLow()) + " to " + kn(answer.clampHigh()) + " kN (plus or minus "
                + percent(Method.TORQUE_WRENCH.scatter()) + ", MIL-HDBK-60 table I).");
        boolean before = answer.asked().angle() != null && answer.clampAfterAngle() == null;
        notes.add(
                before
                        ? "Loosening is for the torque alone; the angle adds to it. Rust or galling asks for half as much again"
                                + " and more (common practice, no source)."
                        : "Loosening: the lower figure is straight after tightening, the upper after half a day; rust or"
                                + " galling asks for half as much again and more (common practice, no source).");
    }

    private static void strength(Tightness answer, List<String> notes) {
        Asked asked = answer.asked();
        if (answer.yieldUse() > 1) {
            notes.add("The bolt yields: pull and twist together reach " + percent(answer.yieldUse())
                    + " of its yield stress at this friction.");
        } else if (answer.proofUse() > 1) {
            notes.add("The clamp load is above the proof load: the bolt may not come back to its length.");
        }
        if (Answering.strength(asked).proofIsYield()) {
            notes.add("ISO 3506-1 states no proof load for " + asked.grade().mark()
                    + ": the load at 0.2 % elongation stands in its place.");
        }
        if (asked.grade() == PropertyClass.C9_8 && asked.thread().diameterMm() > NINE_EIGHT_LIMIT_MM) {
            notes.add("Class 9.8 ends at M16 in ISO 898-1.");
        }
    }

    private static String angle(Tightness answer) {
        Force after = answer.clampAfterAngle();
        if (after == null) {
            return "What the angle adds is not known: that takes the stiffness of bolt and joint. The angle is a tick of"
                    + " its own, not a torque.";
        }
        Asked asked = answer.asked();
        Force yields = Utilisation.clamp(
                asked.thread(), Answering.strength(asked), asked.friction().thread(), 1);
        return after.newtons() > yields.newtons()
                ? "With the angle the bolt is turned into yield, at about " + kn(yields) + " kN; elastic it would be "
                        + kn(after) + " kN. Such bolts are used once."
                : "With the angle the clamp load is about " + kn(after) + " kN, bolt and joint elastic.";
    }

    private static String kn(Force force) {
        return Torque.figure(force.kilonewtons());
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    private static String plain(double value) {
        return ThreadText.plain(value);
    }
}
