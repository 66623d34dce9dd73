package putback.angles.linkage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import putback.quantity.Length;
import putback.quantity.Parsed;

/**
 * The wheel through its travel, the rack held.
 *
 * @param positions by rising travel, as far as the geometry goes
 * @param locks where it goes no further before the end that was asked for
 */
public record Travel(List<WheelPosition> positions, List<Lock> locks) {
    public Travel {
        positions = List.copyOf(positions);
        locks = List.copyOf(locks);
    }

    /**
     * From where to where, upward positive.
     *
     * @param stepMm above 0
     */
    public record Span(double fromMm, double stepMm, int count) {
        private static final int MOST = 2001;
        private static final double FARTHEST_MM = 2000;
        private static final double ROUND = 1e6;

        /** Refused when there is no travel in it, or more positions than anyone reads. */
        public static Parsed<Span> of(Length from, Length to, Length step) {
            if (!(step.millimetres() > 0)) {
                return new Parsed.Refused<>("a step of " + step.text() + " goes nowhere; it has to be more than zero");
            }
            if (to.millimetres() < from.millimetres()) {
                return new Parsed.Refused<>("the travel ends at " + to.text() + ", below where it begins at "
                        + from.text() + "; change them round");
            }
            if (Math.max(Math.abs(from.millimetres()), Math.abs(to.millimetres())) > FARTHEST_MM) {
                return new Parsed.Refused<>("a wheel does not travel more than 2 m; write it like -60mm to 60mm");
            }
            double steps = Math.floor((to.millimetres() - from.millimetres()) / step.millimetres() + 1e-9);
            return steps < MOST
                    ? new Parsed.Value<>(new Span(from.millimetres(), step.millimetres(), 1 + (int) steps))
                    : new Parsed.Refused<>(
                            "steps of " + step.text() + " make more than " + MOST + " positions; take longer steps");
        }

        double at(int index) {
            return Math.rint((fromMm + index * stepMm) * ROUND) / ROUND;
        }
    }

    /**
     * Follows the wheel from its design up and down.
     *
     * @param rack shift of the rack, to the left positive
     */
    public static Travel of(Corner corner, Length rack, Span span) {
        Closing closing = new Closing(corner);
        Following following = new Following(closing);
        Goal design = Goal.at(0, 0);
        Goal racked = Goal.at(0, corner.right() ? -rack.millimetres() : rack.millimetres());
        Following.Reached start = following.from(corner.designed(), design, racked);
        if (!start.arrived()) {
            return new Travel(List.of(), List.of(Lock.ofRack(closing, start, corner.right())));
        }
        List<WheelPosition> positions = new ArrayList<>();
        List<Lock> locks = new ArrayList<>();
        Walk walk = new Walk(corner, closing, positions, locks);
        int first = 0;
        while (first < span.count && span.at(first) < 0) {
            first++;
        }
        walk.along(start, span, first - 1, -1);
        Collections.reverse(positions);
        walk.along(start, span, first, 1);
        return new Travel(positions, locks);
    }

    /** One way along the travel, each position from the one before. */
    private record Walk(Corner corner, Closing closing, List<WheelPosition> positions, List<Lock> locks) {
        void along(Following.Reached start, Span span, int from, int by) {
            Following following = new Following(closing);
            Following.Reached reached = start;
            for (int i = from; i >= 0 && i < span.count(); i += by) {
                Goal next = Goal.at(span.at(i), reached.goal().rackMm());
                reached = following.from(reached.state(), reached.goal(), next);
                if (!reached.arrived()) {
                    locks.add(Lock.ofTravel(closing, reached));
                    return;
                }
                positions.add(WheelPosition.of(corner, reached.state(), span.at(i)));
            }
        }
    }
}
