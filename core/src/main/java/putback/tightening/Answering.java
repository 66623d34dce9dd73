package putback.tightening;

import org.jspecify.annotations.Nullable;
import putback.quantity.Force;
import putback.quantity.Parsed;
import putback.quantity.StatedTorque;
import putback.quantity.Torque;
import putback.quantity.TorqueUnit;

/** Answers a question about one fastener. */
final class Answering {
    /** Found up to a tenth above the tightening torque after half a day (Bolt Science, untightening of nuts and bolts). */
    private static final double SETTLED = 1.1;

    private Answering() {}

    static Parsed<Tightness> of(Asked asked) {
        if (asked.grade().isSae() != asked.thread().series().isInch()) {
            return new Parsed.Refused<>(
                    asked.grade().mark() + " does not go with " + asked.thread().designation()
                            + "; SAE grades are for inch threads, property classes for metric ones");
        }
        if (asked.goal() instanceof Asked.Goal.ByTorque by
                && by.stated().torque().newtonMetres() <= asked.prevailing().newtonMetres()) {
            return new Parsed.Refused<>(by.stated().torque().text() + " does not turn a nut that takes "
                    + asked.prevailing().text() + " before it clamps; the torque has to be the larger");
        }
        return new Parsed.Value<>(answer(asked, clamp(asked)));
    }

    private static Force clamp(Asked asked) {
        if (asked.goal() instanceof Asked.Goal.ByTorque by) {
            return asked.law().clamp(by.stated().torque(), asked.prevailing());
        }
        if (asked.goal() instanceof Asked.Goal.ByClamp by) {
            return by.clamp();
        }
        return Utilisation.clamp(
                asked.thread(), strength(asked), asked.friction().thread(), ((Asked.Goal.ByUse) asked.goal()).share());
    }

    private static Tightness answer(Asked asked, Force clamp) {
        Strength strength = strength(asked);
        Force proof = new Force(strength.proofMpa() * asked.thread().stressAreaMm2());
        TorqueLaw law = asked.law();
        Torque torque = law.torque(clamp, asked.prevailing());
        StatedTorque stated = asked.goal() instanceof Asked.Goal.ByTorque by
                ? by.stated()
                : new StatedTorque(torque, TorqueUnit.NEWTON_METRE);
        Plausibility plausibility = Plausibility.of(
                asked.thread(),
                asked.grade(),
                FrictionSpan.DRY,
                stated,
                new Plausibility.Circumstance(
                        asked.prevailing(), asked.angle() != null, !(asked.goal() instanceof Asked.Goal.ByTorque)));
        boolean hexFits = asked.hex() == null || HexSizes.doubt(asked.thread(), asked.hex()) == null;
        Force after = afterAngle(asked, clamp);
        Force end = after == null ? clamp : lesser(after, asked, strength);
        double scatter = Method.TORQUE_WRENCH.scatter();
        return new Tightness(
                asked,
                proof,
                clamp,
                clamp.newtons() / proof.newtons(),
                Utilisation.share(asked.thread(), strength, asked.friction().thread(), clamp),
                torque,
                new Force(clamp.newtons() * (1 - scatter)),
                new Force(clamp.newtons() * (1 + scatter)),
                law.loosening(end, asked.prevailing()),
                new Torque(SETTLED * law.torque(end, asked.prevailing()).newtonMetres()),
                after,
                plausibility,
                plausibility.isPlausible() && hexFits);
    }

    /** An angle into yield ends at the load that yields. */
    private static Force lesser(Force after, Asked asked, Strength strength) {
        Force yields =
                Utilisation.clamp(asked.thread(), strength, asked.friction().thread(), 1);
        return after.newtons() < yields.newtons() ? after : yields;
    }

    private static @Nullable Force afterAngle(Asked asked, Force clamp) {
        if (asked.angle() == null || asked.stiffnessNPerMm() == null) {
            return null;
        }
        Force added = Turning.adds(asked.thread(), asked.angle(), 1 / asked.stiffnessNPerMm());
        return new Force(clamp.newtons() + added.newtons());
    }

    static Strength strength(Asked asked) {
        return asked.grade().strength(asked.thread());
    }
}
