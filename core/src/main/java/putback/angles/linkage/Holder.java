package putback.angles.linkage;

import putback.angles.space.Vector;

/**
 * One condition that holds the carrier: how far it is from being met, in mm, and how that changes as the carrier moves
 * and turns. The derivatives are exact. Points of the carrier are those of the design, where its pose is none.
 */
sealed interface Holder {
    String name();

    /** Distance from being met. */
    double miss(State state);

    /** Change of the miss by a shift of the carrier. */
    Vector byShift(State state);

    /** Change of the miss by a small turn of the carrier about its wheel centre. */
    Vector byTurn(State state);

    /** Change of the miss by turning the strut in the carrier, a radian. */
    default double byBolt(State state) {
        return 0;
    }

    /** Change of the miss by lengthening the track rod, a millimetre. */
    default double byRod(State state) {
        return 0;
    }

    /** A link of fixed length between a pivot of the body and a point of the carrier. */
    record Leg(String name, Vector inner, Vector outer) implements Holder {
        private double length() {
            return outer.minus(inner).length();
        }

        @Override
        public double miss(State state) {
            Vector along = state.at(outer).minus(inner);
            return (along.dot(along) - length() * length()) / (2 * length());
        }

        @Override
        public Vector byShift(State state) {
            return state.at(outer).minus(inner).times(1 / length());
        }

        @Override
        public Vector byTurn(State state) {
            return state.arm(outer).cross(byShift(state));
        }
    }

    /** The track rod, whose inner end moves with the rack and whose length is set. */
    record Rod(Vector inner, Vector outer) implements Holder {
        @Override
        public String name() {
            return "the track rod";
        }

        private Vector along(State state) {
            return state.at(outer).minus(inner.plus(new Vector(0, state.rackMm(), 0)));
        }

        private double length(State state) {
            return outer.minus(inner).length() + state.rodMm();
        }

        @Override
        public double miss(State state) {
            Vector along = along(state);
            double length = length(state);
            return (along.dot(along) - length * length) / (2 * length);
        }

        @Override
        public Vector byShift(State state) {
            return along(state).times(1 / length(state));
        }

        @Override
        public Vector byTurn(State state) {
            return state.arm(outer).cross(byShift(state));
        }

        @Override
        public double byRod(State state) {
            double share = along(state).length() / length(state);
            return -(share * share + 1) / 2;
        }
    }

    /** The top mount stays on the strut's axis, seen along one direction across it. */
    record Slide(Vector top, Vector clamp, Vector across) implements Holder {
        @Override
        public String name() {
            return "the strut";
        }

        private Vector over(State state) {
            return top.minus(state.atStrut(clamp));
        }

        private Vector acrossNow(State state) {
            return state.ofStrut(across);
        }

        @Override
        public double miss(State state) {
            return over(state).dot(acrossNow(state));
        }

        @Override
        public Vector byShift(State state) {
            return acrossNow(state).times(-1);
        }

        @Override
        public Vector byTurn(State state) {
            Vector now = acrossNow(state);
            Vector arm = state.atStrut(clamp).minus(state.centre());
            return now.cross(over(state)).minus(arm.cross(now));
        }

        @Override
        public double byBolt(State state) {
            Vector axis = state.turn().of(Vector.FORWARD);
            Vector now = acrossNow(state);
            Vector arm = state.atStrut(clamp).minus(state.at(state.frame().pivot()));
            return over(state).dot(axis.cross(now)) - axis.cross(arm).dot(now);
        }
    }
}
