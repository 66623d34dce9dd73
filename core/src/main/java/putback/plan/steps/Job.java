package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Network;
import putback.plan.access.Ties;
import putback.plan.order.Move;
import putback.plan.selection.Selection;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;
import putback.sheet.Fastener;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Letting;
import putback.sheet.Part;
import putback.sheet.SeatedSpring;
import putback.sheet.Side;
import putback.sheet.Station;

/** What is known about a trip before its first step. */
final class Job {
    private static final List<String> HEAVY = List.of("beam", "subframe", "axle", "engine", "gearbox", "cradle");

    final Assembly assembly;
    final Network network;
    final Selection selection;
    final Renewal renewal;
    final Reach reach;
    final List<Move> moves;
    final List<SeatedSpring> springs;
    /** How many of the moves come before the car is raised. */
    final int early;

    final BitSet opened = new BitSet();
    final BitSet off = new BitSet();
    final BitSet hung = new BitSet();
    private final List<Part> heavy = new ArrayList<>();

    Job(Assembly assembly, Network network, Wanted wanted, Selection selection, OnWheelsFirst order) {
        this.assembly = assembly;
        this.network = network;
        this.selection = selection;
        this.renewal = Renewal.of(assembly, wanted, selection);
        this.reach = new Reach(network);
        this.moves = order.moves();
        this.springs = SeatedSpring.of(assembly);
        this.early = order.early();
        for (Move move : moves) {
            if (move instanceof Move.Open open) {
                opened.set(open.joint());
            }
        }
        for (int part : selection.off()) {
            off.set(part);
        }
        for (int part : selection.hung()) {
            hung.set(part);
        }
        for (Part part : assembly.parts()) {
            if (!part.isBody() && !part.isTether() && isHeavy(part)) {
                heavy.add(part);
            }
        }
    }

    Joint joint(int index) {
        return assembly.joints().get(index);
    }

    Part part(int index) {
        return assembly.parts().get(index);
    }

    List<Part> parts(List<Integer> indices) {
        List<Part> parts = new ArrayList<>();
        for (int index : indices) {
            parts.add(part(index));
        }
        return List.copyOf(parts);
    }

    List<Part> parts(BitSet group) {
        List<Part> parts = new ArrayList<>();
        for (int part = group.nextSetBit(0); part >= 0; part = group.nextSetBit(part + 1)) {
            parts.add(part(part));
        }
        return List.copyOf(parts);
    }

    /** The rest of a group. */
    List<Part> others(BitSet group, Part named) {
        BitSet others = (BitSet) group.clone();
        others.clear(named.index());
        return parts(others);
    }

    boolean wheelIsOff(Ties ties) {
        for (Part part : assembly.parts()) {
            if (isWheel(part) && ties.off(part.index())) {
                return true;
            }
        }
        return false;
    }

    /** Whether it hangs on its tethers even when all is closed. */
    boolean hangsAlways(int part) {
        return ties(new BitSet()).hung(part);
    }

    /** Whether the load of a spring goes through it. */
    boolean seatsSpring(Joint joint) {
        for (SeatedSpring spring : springs) {
            if (spring.seats().contains(joint.index())) {
                return true;
            }
        }
        return false;
    }

    /** Whether a spring stays in its compressor until the joint has been looked at again. */
    boolean keepsCompressor(Joint joint) {
        boolean compressor = false;
        for (Letting letting : joint.letsGo()) {
            compressor |= isCompressor(letting);
        }
        return compressor && joint.fastener().critical() && !tightenedLater(joint);
    }

    Fastener back(Joint joint) {
        return renewal.fastenerBack(joint);
    }

    boolean threaded(Joint joint) {
        return joint.entry().kind().threaded();
    }

    Ties ties(BitSet open) {
        Ties ties = new Ties(network);
        ties.rebuild(open);
        return ties;
    }

    /** How the car has to stand to open or start a joint. */
    static Height heightOf(Joint joint) {
        return joint.entry().height();
    }

    boolean isRaised() {
        for (int index = opened.nextSetBit(0); index >= 0; index = opened.nextSetBit(index + 1)) {
            if (heightOf(joint(index)) == Height.RAISED) {
                return true;
            }
        }
        return false;
    }

    /** A road wheel's own fastener. */
    boolean holdsWheel(Joint joint) {
        return threaded(joint) && joint.entry().station() != Station.BENCH && joinsWheel(joint);
    }

    private boolean joinsWheel(Joint joint) {
        for (int part : joint.joins()) {
            if (isWheel(part(part))) {
                return true;
            }
        }
        return false;
    }

    static boolean isWheel(Part part) {
        String id = part.entry().id();
        return id.endsWith("wheel") && !id.contains("steering") && !id.endsWith("flywheel");
    }

    /** How the car has to stand for the last tightening. */
    Height tightenHeight(Joint joint) {
        Height asked = holdsWheel(joint) ? Height.ON_WHEELS : back(joint).tighten();
        if (asked != Height.RAISED || heightOf(joint) == Height.RAISED) {
            return asked;
        }
        if (heightOf(joint) == Height.ON_WHEELS || !isRaised()) {
            return heightOf(joint);
        }
        return Height.RAISED;
    }

    boolean tightenedUnderLoad(Joint joint) {
        Height height = tightenHeight(joint);
        return threaded(joint)
                && (height == Height.RIDE_HEIGHT || height == Height.ON_WHEELS && heightOf(joint) != Height.ON_WHEELS);
    }

    /** Whether it is run down first and tightened when the car stands otherwise, or after a follow-up of this trip. */
    boolean tightenedLater(Joint joint) {
        return tightenedUnderLoad(joint) || threaded(joint) && followUpBefore(joint) != null;
    }

    /** The follow-up of this trip before which the joint is only run down. */
    @Nullable
    FollowUp followUpBefore(Joint joint) {
        for (FollowUp followUp : selection.followUps()) {
            if (joint.entry().timing().tightenAfter().contains(followUp.id())) {
                return followUp;
            }
        }
        return null;
    }

    /** Parts whose going shifts the weight of the car. */
    List<Part> heavy() {
        return List.copyOf(heavy);
    }

    private boolean isHeavy(Part part) {
        boolean leaves = off.get(part.index()) || hung.get(part.index()) || isLetDown(part);
        boolean shared = assembly.sided() && part.side() == Side.NONE && isLetDown(part);
        return leaves && (shared || isLarge(part.entry().id().toLowerCase(Locale.ROOT)));
    }

    private static boolean isLarge(String id) {
        for (String word : HEAVY) {
            if (id.equals(word) || id.endsWith("-" + word)) {
                return true;
            }
        }
        return false;
    }

    private boolean isLetDown(Part part) {
        for (int index = opened.nextSetBit(0); index >= 0; index = opened.nextSetBit(index + 1)) {
            for (Letting letting : joint(index).letsGo()) {
                if (letting.part() == part.index() && letting.letDown()) {
                    return true;
                }
            }
        }
        return false;
    }

    static boolean isCompressor(Letting letting) {
        return isCompressor(letting.aid());
    }

    static boolean isCompressor(String aid) {
        return aid.toLowerCase(Locale.ROOT).contains("compressor");
    }

    /** Whether it is left out where the part is off or held already: a strap or a jack. */
    static boolean isSpared(String aid) {
        return isJack(aid) || aid.toLowerCase(Locale.ROOT).contains("strap");
    }

    static boolean isJack(String aid) {
        return aid.toLowerCase(Locale.ROOT).contains("jack");
    }
}
