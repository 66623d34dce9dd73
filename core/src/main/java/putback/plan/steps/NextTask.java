package putback.plan.steps;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import putback.plan.access.Ties;
import putback.plan.order.Move;
import putback.quantity.Minutes;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Side;
import putback.sheet.Tether;
import putback.sheet.TetherKind;

/**
 * Which of the things that may be done now is done next.
 *
 * <p>What a spring is let go upon is looked at again while the compressor still holds it. Wheels get their last tightening as soon as they carry the car. What is put on goes on something that bears
 * already. Then the hands stay where they are: no needless change of station, side or tool. Among equals a half-shaft
 * goes into what is offered up over it, then come joints that hold a part up, stiff ones first, and then the way apart
 * backwards.
 */
final class NextTask {
    private static final int SHAFT = 0;
    private static final int HOLDS_STIFFLY = 1;
    private static final int HOLDS = 2;
    private static final int HANGS_ON = 3;

    private final Job job;
    private final StepLog log;
    private final TogetherScene scene;
    private final Map<Integer, Integer> turn = new HashMap<>();
    private final Pivots pivots;
    /** Threaded joints of this trip. */
    private final BitSet threaded = new BitSet();

    private final BitSet early = new BitSet();
    private Ties tied;
    private Ties bearing;

    NextTask(Job job, StepLog log, TogetherScene scene) {
        this.job = job;
        this.log = log;
        this.scene = scene;
        this.pivots = new Pivots(job.network);
        this.tied = scene.ties();
        this.bearing = scene.bearing();
        for (int i = 0; i < job.moves.size(); i++) {
            if (job.moves.get(i) instanceof Move.Open one) {
                turn.put(one.joint(), i);
                threaded.set(one.joint(), job.threaded(job.joint(one.joint())));
            }
        }
    }

    /** Its number, or -1 when nothing is left at this height. */
    int of(TaskGraph graph, BitSet done) {
        tied = scene.ties();
        bearing = scene.bearing();
        int best = -1;
        for (int i = 0; i < graph.size(); i++) {
            if (graph.isReady(i, done, log.height())) {
                early.set(i, isEarly(graph.task(i)));
                best = best < 0 || compare(graph, i, best) < 0 ? i : best;
            }
        }
        return best;
    }

    private int compare(TaskGraph graph, int one, int other) {
        Task a = graph.task(one);
        Task b = graph.task(other);
        int order = Integer.compare(rank(a), rank(b));
        order = order == 0 ? Boolean.compare(early.get(one), early.get(other)) : order;
        order = order == 0 ? setup(a).compareTo(setup(b)) : order;
        order = order == 0 ? Integer.compare(stage(a), stage(b)) : order;
        order = order == 0 ? Integer.compare(holding(a), holding(b)) : order;
        order = order == 0 ? Integer.compare(position(b), position(a)) : order;
        return order == 0 ? Boolean.compare(isCritical(b), isCritical(a)) : order;
    }

    private int rank(Task task) {
        Joint joint = task.joint();
        if (joint != null && task.kind() == Task.Kind.SECOND_LOOK && job.keepsCompressor(joint)) {
            return -2;
        }
        boolean wheel = joint != null && task.kind() == Task.Kind.TIGHTEN && job.holdsWheel(joint);
        return wheel && log.height() == Height.ON_WHEELS ? -1 : task.kind().rank();
    }

    /** What is in hand is finished before a part is fetched. */
    private int stage(Task task) {
        Joint joint = task.joint();
        boolean fetched = joint != null && task.kind() == Task.Kind.START && isFetched(joint);
        return fetched ? Task.Kind.TIGHTEN.ordinal() * 2 + 1 : task.kind().ordinal() * 2;
    }

    private boolean isFetched(Joint joint) {
        boolean fetched = false;
        for (int part : joint.joins()) {
            fetched |= tied.off(part);
        }
        return fetched && !job.network.isBench(joint.index());
    }

    private static boolean isCritical(Task task) {
        FollowUp followUp = task.followUp();
        return followUp != null && followUp.critical();
    }

    /** When its joint was opened; later ones go back first. */
    int position(Task task) {
        Joint joint = task.joint();
        return joint == null ? -1 : turn.getOrDefault(joint.index(), -1);
    }

    private Minutes setup(Task task) {
        Joint joint = task.joint();
        if (joint == null) {
            Side side = task.part() < 0 ? Side.NONE : job.part(task.part()).side();
            return log.setup(null, side, "");
        }
        boolean byHand = task.kind() == Task.Kind.START || task.kind() == Task.Kind.SECOND_LOOK;
        String key = byHand ? "" : ToolText.key(joint, job.back(joint));
        return log.setup(joint.entry().station(), joint.side(), key);
    }

    /** Whether it would be started on something that nothing bears yet; the bench bears all. */
    private boolean isEarly(Task task) {
        Joint joint = task.joint();
        if (joint == null
                || task.kind() != Task.Kind.START
                || job.network.isBench(joint.index())
                || takesShaft(joint)) {
            return false;
        }
        boolean held = false;
        boolean shaky = false;
        for (int part : joint.joins()) {
            boolean bears = !job.network.isTether(part) && bearing.heldToBody(part);
            held |= bears;
            shaky |= bears && isShaky(part);
        }
        return !held || shaky && isFetched(joint);
    }

    /** Whether a fixing that holds it, or what is in one piece with it, is only on its first threads. */
    private boolean isShaky(int part) {
        BitSet fixings = (BitSet) threaded.clone();
        fixings.or(scene.open);
        BitSet piece = pivots.stiff(part, fixings);
        if (piece.get(0)) {
            return false;
        }
        for (int joint = scene.loose.nextSetBit(0); joint >= 0; joint = scene.loose.nextSetBit(joint + 1)) {
            for (int joined : job.network.joins(joint)) {
                if (piece.get(joined)) {
                    return true;
                }
            }
        }
        return false;
    }

    private int holding(Task task) {
        Joint joint = task.joint();
        if (joint == null || task.kind() != Task.Kind.START) {
            return HANGS_ON;
        }
        if (takesShaft(joint)) {
            return SHAFT;
        }
        if (!holdsUp(joint)) {
            return HANGS_ON;
        }
        return joint.entry().pivot() ? HOLDS : HOLDS_STIFFLY;
    }

    private boolean takesShaft(Joint joint) {
        for (int part : joint.joins()) {
            Tether tether = job.part(part).entry().tether();
            if (tether != null && tether.kind() == TetherKind.SHAFT) {
                return true;
            }
        }
        return false;
    }

    /** Whether it ties what nothing holds yet to what is held. */
    private boolean holdsUp(Joint joint) {
        boolean held = false;
        boolean free = false;
        for (int part : joint.joins()) {
            boolean rigid = !job.network.isTether(part);
            held |= rigid && tied.heldToBody(part);
            free |= rigid && !tied.heldToBody(part);
        }
        return held && free;
    }
}
