package putback.tightening;

import putback.quantity.Force;
import putback.quantity.Torque;

/** How torque and clamp load belong together while a fastener is turned, prevailing torque left out. */
public sealed interface TorqueLaw {
    /**
     * VDI 2230 part 1, exact form: MA = FM (d2/2 tan(phi + rho') + DKm/2 muK).
     *
     * @param face under the side that is turned
     */
    record ByFriction(ScrewThread thread, Friction friction, BearingFace face) implements TorqueLaw {
        @Override
        public double torquePerForceMm() {
            return threadArm(1) + faceArm();
        }

        @Override
        public double looseningPerForceMm() {
            return threadArm(-1) + faceArm();
        }

        /**
         * Lever arm of the thread, mm.
         *
         * @param up 1 while it is tightened, -1 while it is loosened
         */
        public double threadArm(int up) {
            double helix = thread.helixTangent();
            double flank = ScrewThread.flankFriction(friction.thread());
            return thread.pitchDiameterMm() / 2 * (flank + up * helix) / (1 - up * helix * flank);
        }

        /** Lever arm of the friction under the turned face, mm. */
        public double faceArm() {
            return face.effectiveDiameterMm() / 2 * friction.head();
        }
    }

    /**
     * T = K D F (NASA-STD-5020, equation 24; MIL-HDBK-60).
     *
     * @param factor K, above 0
     */
    record ByNutFactor(ScrewThread thread, double factor) implements TorqueLaw {
        @Override
        public double torquePerForceMm() {
            return factor * thread.diameterMm();
        }

        /** The part of the torque that only lifts, P / (2 pi), turns its sign. */
        @Override
        public double looseningPerForceMm() {
            return torquePerForceMm() - thread.pitchMm() / Math.PI;
        }
    }

    /** Torque for each newton of clamp load, N·mm/N. */
    double torquePerForceMm();

    /** Torque that loosens, for each newton of clamp load, N·mm/N; not positive where it would come undone by itself. */
    double looseningPerForceMm();

    /** Clamp load that a torque brings. */
    default Force clamp(Torque torque, Torque prevailing) {
        return new Force((torque.newtonMetres() - prevailing.newtonMetres()) * 1000 / torquePerForceMm());
    }

    /** Torque that a clamp load takes. */
    default Torque torque(Force clamp, Torque prevailing) {
        return new Torque(clamp.newtons() * torquePerForceMm() / 1000 + prevailing.newtonMetres());
    }

    /** Torque that loosens, straight after tightening and without rust. */
    default Torque loosening(Force clamp, Torque prevailing) {
        return new Torque(clamp.newtons() * looseningPerForceMm() / 1000 + prevailing.newtonMetres());
    }
}
