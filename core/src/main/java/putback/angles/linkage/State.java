package putback.angles.linkage;

import putback.angles.space.Turn;
import putback.angles.space.Vector;

/**
 * Where the carrier is, and how its adjusters stand.
 *
 * @param frame what does not move in the carrier
 * @param centre wheel centre
 * @param turn from the design
 * @param rackMm of the rack, to the left
 * @param rodMm by which the track rod is longer than designed
 * @param boltRad by which the carrier is turned against the strut; positive tips the wheel top outboard
 */
record State(Frame frame, Vector centre, Turn turn, double rackMm, double rodMm, double boltRad) {
    /**
     * @param centre wheel centre as designed
     * @param pivot of the bolted joint between carrier and strut; any point where there is none
     */
    record Frame(Vector centre, Vector pivot) {}

    static State designed(Frame frame) {
        return new State(frame, frame.centre, Turn.NONE, 0, 0, 0);
    }

    /** From the wheel centre to a point of the carrier. */
    Vector arm(Vector point) {
        return turn.of(point.minus(frame.centre));
    }

    Vector at(Vector point) {
        return centre.plus(arm(point));
    }

    /** A point of the strut, which turns in the carrier about an axis along x through the pivot. */
    Vector atStrut(Vector point) {
        Vector turned = bolt().of(point.minus(frame.pivot)).plus(frame.pivot);
        return at(turned);
    }

    Vector ofStrut(Vector direction) {
        return turn.of(bolt().of(direction));
    }

    /** The strut as seen from the carrier turns the other way than the carrier seen from the strut. */
    private Turn bolt() {
        return Turn.by(new Vector(boltRad, 0, 0));
    }

    State withRack(double to) {
        return new State(frame, centre, turn, to, rodMm, boltRad);
    }

    /**
     * @param by three shifts in mm, three turns in radians, then mm of the rod, then radians at the bolt
     */
    State moved(double[] by) {
        return new State(
                frame,
                centre.plus(new Vector(by[0], by[1], by[2])),
                Turn.by(new Vector(by[3], by[4], by[5])).after(turn),
                rackMm,
                rodMm + by[6],
                boltRad + by[7]);
    }
}
