package putback.app.ladder;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;
import putback.sheet.Fastener;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Side;
import putback.sheet.Station;

/**
 * What stands on one rail at one place.
 *
 * @param step number of the step that it stands for
 * @param joint null unless a joint is worked on
 * @param fastener null unless a joint is worked on
 * @param tool with what holds the other side; empty for none
 * @param station null where it makes no difference
 * @param depth layers of other fixings that lie over the joint
 * @param leaving names of what leaves or moves aside once this is done
 */
record Cell(
        Kind kind,
        int step,
        @Nullable Joint joint,
        @Nullable Fastener fastener,
        String text,
        String tool,
        Minutes minutes,
        @Nullable Station station,
        Side side,
        Height height,
        int depth,
        List<String> leaving) {
    enum Kind {
        /** A joint is opened, or closed as far as it goes. */
        JOINT,
        /** A joint is broken loose. */
        LOOSE,
        /** A joint is closed but tightened at another height, further up. */
        STARTED,
        /** A joint that was closed further down is tightened. */
        TIGHTENED,
        HEIGHT,
        AID_ON,
        AID_OFF,
        OTHER,
        FOLLOW_UP
    }

    Cell {
        leaving = List.copyOf(leaving);
    }

    /** The same as another kind and with other minutes. */
    Cell as(Kind other, Minutes others) {
        return new Cell(other, step, joint, fastener, text, tool, others, station, side, height, depth, leaving);
    }

    /** The same with the tool that it is tightened with. */
    Cell turnedWith(String other) {
        return new Cell(kind, step, joint, fastener, text, other, minutes, station, side, height, depth, leaving);
    }

    /** The same with one thing more that leaves. */
    Cell alsoLeaving(String name) {
        List<String> longer = new ArrayList<>(leaving);
        longer.add(name);
        return new Cell(kind, step, joint, fastener, text, tool, minutes, station, side, height, depth, longer);
    }

    /** Whether the rung of its joint ends here. */
    boolean rungEnd() {
        return kind == Kind.JOINT || kind == Kind.STARTED;
    }

    /** Index of the joint, -1 for none. */
    int jointIndex() {
        return joint == null ? -1 : joint.index();
    }

    boolean threaded() {
        return joint != null && joint.entry().kind().threaded();
    }

    boolean critical() {
        return fastener != null && fastener.critical();
    }

    boolean singleUse() {
        return fastener != null && fastener.singleUse();
    }

    /** The torque in the first unit, in brackets as a drawing shows what nobody vouches for. */
    String firstUnit() {
        return fastener == null ? "" : bracketed(Figures.firstUnit(fastener), fastener);
    }

    /** The same in the second unit. */
    String secondUnit() {
        return fastener == null ? "" : bracketed(Figures.secondUnit(fastener), fastener);
    }

    private static String bracketed(String figure, Fastener fastener) {
        return Figures.unsourced(fastener) ? "(" + figure + ")" : figure;
    }

    /** Whether a torque, or the lack of one, is told here. */
    boolean tellsTightness() {
        return threaded() && (kind == Kind.JOINT || kind == Kind.TIGHTENED);
    }
}
