package putback.tightening;

import putback.quantity.Force;

/**
 * How much of its yield stress a bolt bears while it is tightened, pull and twist together. VDI 2230 part 1, 2001 and
 * later: the twist is spread over the yielding section (factor 1.5), where the editions up to 1986 took it as elastic (2).
 */
public final class Utilisation {
    private static final double PLASTIC = 1.5;

    private Utilisation() {}

    /** Combined stress over pull alone: sqrt(1 + 3 (1.5 d2/d0 tan(phi + rho'))^2), the torsion term in its linear form. */
    private static double combined(ScrewThread thread, double threadFriction) {
        double twist = PLASTIC
                * thread.pitchDiameterMm()
                / thread.stressDiameterMm()
                * (thread.helixTangent() + ScrewThread.flankFriction(threadFriction));
        return Math.sqrt(1 + 3 * twist * twist);
    }

    /**
     * Clamp load at which the combined stress reaches a share of the yield stress.
     *
     * @param share above 0, usually 0.9
     */
    public static Force clamp(ScrewThread thread, Strength strength, double threadFriction, double share) {
        return new Force(share * strength.yieldMpa() * thread.stressAreaMm2() / combined(thread, threadFriction));
    }

    /** Share of the yield stress that the combined stress reaches at a clamp load. */
    public static double share(ScrewThread thread, Strength strength, double threadFriction, Force clamp) {
        return clamp.newtons() * combined(thread, threadFriction) / (strength.yieldMpa() * thread.stressAreaMm2());
    }
}
