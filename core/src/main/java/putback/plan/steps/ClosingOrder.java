package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import putback.plan.order.Move;
import putback.sheet.Height;
import putback.sheet.Joint;

/**
 * What has to be closed before what, and no more than that.
 *
 * <p>A joint is started while all the joints that let it be opened are still open, so each order that keeps to this is
 * the reverse of a sound way apart. What was in the way goes back only when the joint behind it is tight, or run down
 * where it is tightened under load.
 */
final class ClosingOrder {
    private final Job job;
    private final StepLog log;
    private final TaskGraph graph = new TaskGraph();
    private final Map<Integer, Integer> start = new LinkedHashMap<>();
    private final Map<Integer, Integer> runDown = new HashMap<>();
    private final Map<Integer, Integer> tighten = new HashMap<>();
    private final Map<Integer, Integer> look = new HashMap<>();
    private final Map<Integer, Integer> asideBack = new LinkedHashMap<>();
    private final List<int[]> covers = new ArrayList<>();
    private final List<Integer> openedAll = new ArrayList<>();

    ClosingOrder(Job job, StepLog log) {
        this.job = job;
        this.log = log;
        for (Move move : job.moves) {
            if (move instanceof Move.Open one) {
                openedAll.add(one.joint());
            }
        }
        for (int index : openedAll) {
            addTasks(job.joint(index));
        }
        addAsides();
        orderJoints();
        for (int joint : openedAll) {
            orderHolders(joint);
        }
        new OffTheCar(job, this).add();
        new FollowUpOrder(job, this, log).add();
    }

    TaskGraph graph() {
        return graph;
    }

    /** Tasks that put road wheels on. */
    BitSet wheels() {
        BitSet wheels = new BitSet();
        for (int joint : openedAll) {
            if (job.holdsWheel(job.joint(joint)) && Job.heightOf(job.joint(joint)) != Height.ON_WHEELS) {
                wheels.set(at(start, joint));
                wheels.set(at(runDown, joint));
            }
        }
        return wheels;
    }

    private void addTasks(Joint joint) {
        int index = joint.index();
        Height own = Job.heightOf(joint);
        start.put(index, graph.add(Task.of(Task.Kind.START, joint, own)));
        if (job.threaded(joint)) {
            runDown.put(index, graph.add(Task.of(Task.Kind.RUN_DOWN, joint, own)));
            tighten.put(index, graph.add(Task.of(Task.Kind.TIGHTEN, joint, job.tightenHeight(joint))));
            graph.order(at(start, index), at(runDown, index));
            graph.order(at(runDown, index), at(tighten, index));
        }
        if (joint.fastener().critical()) {
            look.put(index, graph.add(Task.of(Task.Kind.SECOND_LOOK, joint, Height.ANY)));
            graph.order(closed(index), at(look, index));
        }
    }

    /** What was broken loose while another joint still held it is tightened when that joint holds again. */
    private void orderHolders(int joint) {
        for (int holder : job.joint(joint).loosenBefore()) {
            if (tighten.containsKey(joint)
                    && start.containsKey(holder)
                    && !graph.ancestors(secured(holder)).get(at(tighten, joint))) {
                graph.order(secured(holder), at(tighten, joint));
            }
        }
    }

    /** The task that puts a joint together, if it was opened; else -1. */
    int start(int joint) {
        return start.getOrDefault(joint, -1);
    }

    /** The task that tightens a joint, if it was opened and has a thread; else -1. */
    int tighten(int joint) {
        return tighten.getOrDefault(joint, -1);
    }

    private static int at(Map<Integer, Integer> tasks, int joint) {
        Integer task = tasks.get(joint);
        if (task == null) {
            throw new IllegalStateException("no task for joint " + joint);
        }
        return task;
    }

    /** The task that closes a joint for good. */
    private int closed(int joint) {
        return tighten.containsKey(joint) ? at(tighten, joint) : at(start, joint);
    }

    /** The task after which a joint can bear: run down where it is tightened under load, else closed for good. */
    int secured(int joint) {
        return job.tightenedLater(job.joint(joint)) ? at(runDown, joint) : closed(joint);
    }

    private void addAsides() {
        for (int part : job.selection.aside()) {
            int task = graph.add(Task.asideBack(part));
            asideBack.put(part, task);
            for (int joint : job.part(part).asideOpens()) {
                if (start.containsKey(joint)) {
                    graph.order(task, at(start, joint));
                }
            }
        }
    }

    private void orderJoints() {
        List<Integer> before = new ArrayList<>();
        BitSet asides = new BitSet();
        for (Move move : job.moves) {
            if (move instanceof Move.MoveAside aside) {
                asides.set(aside.part());
            } else if (move instanceof Move.Open one) {
                orderJoint(job.joint(one.joint()), List.copyOf(before), asides);
                before.add(one.joint());
            }
        }
    }

    private void orderJoint(Joint joint, List<Integer> before, BitSet asides) {
        int index = joint.index();
        Witness start = witness(before, asides, new CanOpen(job.reach, index));
        for (int other = start.joints.nextSetBit(0); other >= 0; other = start.joints.nextSetBit(other + 1)) {
            graph.order(at(this.start, index), at(this.start, other));
        }
        for (int ahead : joint.aheadOf()) {
            if (job.opened.get(ahead)) {
                graph.order(at(this.start, ahead), at(this.start, index));
            }
        }
        Witness secure = witness(before, asides, turns(joint, before, asides));
        waitFor(secured(index), secure, false);
        waitForAsides(at(this.start, index), start.asides);
        if (job.tightenedLater(joint)) {
            orderUnderLoad(joint, before, asides);
        } else if (look.containsKey(index)) {
            waitFor(at(look, index), secure, false);
        }
    }

    /** What running it down needs; on its wheels where it is done there only, or where the car is never raised. */
    private Predicate<Need> turns(Joint joint, List<Integer> before, BitSet asides) {
        Predicate<Need> onWheels = new CanTurn(job.reach, joint, joint.reachOnWheels());
        boolean onWheelsOnly = joint.saysReachOnWheels() && Job.heightOf(joint) == Height.ON_WHEELS;
        return onWheelsOnly || !job.isRaised() && onWheels.test(new Need(bits(before), asides))
                ? onWheels
                : new CanTurn(job.reach, joint, joint.behind());
    }

    private void orderUnderLoad(Joint joint, List<Integer> before, BitSet asides) {
        boolean onWheels = job.tightenHeight(joint) == Height.ON_WHEELS;
        List<List<Integer>> clauses = onWheels ? joint.reachOnWheels() : joint.behind();
        Predicate<Need> turns = new CanTurn(job.reach, joint, clauses);
        List<Integer> others = before;
        if (!turns.test(new Need(bits(before), asides))) {
            others = new ArrayList<>(openedAll);
            others.remove(Integer.valueOf(joint.index()));
        }
        if (!turns.test(new Need(bits(others), asides))) {
            log.warn(joint.name() + " is tightened " + job.tightenHeight(joint).word()
                    + ", but it cannot be reached then: look at the sheet.");
            return;
        }
        Witness reached = witness(others, asides, turns);
        waitFor(at(tighten, joint.index()), reached, true);
        if (look.containsKey(joint.index())) {
            waitFor(at(look, joint.index()), reached, true);
        }
    }

    private void waitFor(int task, Witness reached, boolean cover) {
        for (int other = reached.joints.nextSetBit(0); other >= 0; other = reached.joints.nextSetBit(other + 1)) {
            graph.order(task, at(start, other));
            if (cover) {
                covers.add(new int[] {task, at(start, other)});
            }
        }
        waitForAsides(task, reached.asides);
    }

    private void waitForAsides(int task, BitSet asides) {
        for (int part = asides.nextSetBit(0); part >= 0; part = asides.nextSetBit(part + 1)) {
            if (asideBack.containsKey(part)) {
                graph.order(task, at(asideBack, part));
            }
        }
    }

    /**
     * @param joints that have to be open
     * @param asides parts that have to be aside
     */
    private record Witness(BitSet joints, BitSet asides) {}

    private record Need(BitSet open, BitSet asides) {}

    private record CanOpen(Reach reach, int joint) implements Predicate<Need> {
        @Override
        public boolean test(Need need) {
            return reach.canOpen(joint, need.open, need.asides);
        }
    }

    private record CanTurn(Reach reach, Joint joint, List<List<Integer>> clauses) implements Predicate<Need> {
        @Override
        public boolean test(Need need) {
            return reach.canTurn(joint, clauses, need.open, need.asides);
        }
    }

    private record EnoughOpen(Predicate<Need> enough, BitSet asides) implements Predicate<BitSet> {
        @Override
        public boolean test(BitSet open) {
            return enough.test(new Need(open, asides));
        }
    }

    private record EnoughAside(Predicate<Need> enough, BitSet open) implements Predicate<BitSet> {
        @Override
        public boolean test(BitSet asides) {
            return enough.test(new Need(open, asides));
        }
    }

    private static BitSet bits(List<Integer> values) {
        BitSet bits = new BitSet();
        for (int value : values) {
            bits.set(value);
        }
        return bits;
    }

    private static Witness witness(List<Integer> before, BitSet asides, Predicate<Need> enough) {
        if (!enough.test(new Need(bits(before), asides))) {
            return new Witness(bits(before), (BitSet) asides.clone());
        }
        BitSet joints = Reach.fewest(before, new EnoughOpen(enough, asides));
        BitSet used = Reach.fewest(list(asides), new EnoughAside(enough, joints));
        return new Witness(joints, used);
    }

    private static List<Integer> list(BitSet bits) {
        List<Integer> values = new ArrayList<>();
        for (int bit = bits.nextSetBit(0); bit >= 0; bit = bits.nextSetBit(bit + 1)) {
            values.add(bit);
        }
        return values;
    }

    /**
     * Lets go of what cannot be kept: covers of fixings that are tightened under load, where nothing else would let the
     * car go back together.
     *
     * @return whether something was let go
     */
    boolean relent(BitSet done) {
        List<int[]> stuck = new ArrayList<>();
        for (int[] pair : covers) {
            if (!done.get(pair[0])) {
                stuck.add(pair);
            }
        }
        for (int[] pair : stuck) {
            Task task = graph.task(pair[0]);
            Joint joint = task.joint();
            if (joint != null && task.kind() == Task.Kind.TIGHTEN) {
                log.warn(joint.name() + " is to be tightened "
                        + job.tightenHeight(joint).word()
                        + ", but what is in its way has to be on again by then: the sheet asks the impossible.");
            }
            graph.forget(pair[0], pair[1]);
        }
        covers.removeAll(stuck);
        return !stuck.isEmpty();
    }
}
