package putback.plan.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Numbers;
import putback.plan.selection.Choice;
import putback.plan.selection.Deadlock;
import putback.plan.selection.Demand;
import putback.plan.selection.Effort;
import putback.plan.selection.Least;
import putback.plan.selection.LeastWork;
import putback.plan.selection.Room;
import putback.plan.selection.Selections;
import putback.plan.selection.Wanted;
import putback.plan.selection.Within;
import putback.quantity.Minutes;
import putback.sheet.Assembly;
import putback.sheet.Joint;

/**
 * Finds the joints to open and their order with the least work and set-up together.
 *
 * <p>Branch and bound. The least work within a kind of choice, plus the least set-up that its certain joints need when
 * all others are taken as open, bounds what that kind can give: leaving joints out of an order never adds a change, and
 * more open joints never block one. Joints and asides are put in or out until bound and best meet. The search is counted
 * in nodes and states; where the count runs out, the best found is given with the bound that was reached.
 */
public final class CourseSearch {
    private static final int NODES = 600;
    private static final int MOST_NODES = 4_000;
    /** The first choice may take this many times the effort that all others together may. */
    private static final int FIRST_AGAINST_REST = 6;

    private static final int STATES = 60_000;
    private static final int STATES_IN_ALL = 240_000;
    private static final int MOST_TO_ORDER = 63;

    private final Network network;
    private final Demand demand;
    private final Effort effort;
    private final LeastWork leastWork;
    private final Map<BitSet, Order> orders = new HashMap<>();
    private long bestRank = LeastWork.NO_LIMIT;
    private long openRank = LeastWork.NO_LIMIT;
    private @Nullable Course best;
    private int nodes;
    /** What the first choice took; below 0 before it is known. */
    private long firstNodes = -1;

    private long nodesOfRoom;
    private int statesLeft = STATES_IN_ALL;

    private CourseSearch(Assembly assembly, Wanted wanted, Effort effort) {
        this.effort = effort;
        this.network = Network.of(assembly);
        this.demand = Demand.of(network, wanted);
        this.leastWork = new LeastWork(demand, effort);
    }

    /**
     * The best course, or which joints lock each other.
     *
     * @param effort for the first choice; where it is used up, the best found comes without proof
     */
    public static Courses best(Assembly assembly, Wanted wanted, Effort effort) {
        CourseSearch search = new CourseSearch(assembly, wanted, effort);
        search.explore(Within.anything(), 0);
        Course found = search.best;
        return found == null
                ? new Courses.None(Deadlock.in(search.demand))
                : new Courses.Found(search.withProof(found));
    }

    private Course withProof(Course found) {
        boolean proven = openRank >= bestRank;
        long objective = found.selection().work().millionths() + found.setup().millionths();
        long bound = proven ? objective : Math.min(objective, openRank / LeastWork.SCALE);
        return new Course(
                found.selection(), found.moves(), found.setup(), proven || bound == objective, new Minutes(bound));
    }

    private long choosing() {
        return leastWork.nodes() + nodesOfRoom;
    }

    /** Whether the search has to come to an end with what it has. */
    private boolean usedUp() {
        return nodes > NODES || firstNodes >= 0 && (choosing() - firstNodes > MOST_NODES || effort.usedUp());
    }

    /**
     * @param knownRank no choice of this kind has a lower rank
     */
    private void explore(Within within, long knownRank) {
        nodes++;
        if (usedUp()) {
            openRank = Math.min(openRank, knownRank);
            return;
        }
        long setup = cheapBound(certain(within)) * LeastWork.SCALE;
        Least least = leastWork.least(within, best == null ? LeastWork.NO_LIMIT : bestRank - setup);
        Choice choice = least.choice();
        if (choice != null) {
            consider(choice);
        }
        if (!least.isProven()) {
            openRank = Math.min(openRank, Math.max(knownRank, least.bound() + setup));
        }
        if (choice == null || !least.isProven()) {
            return;
        }
        if (firstNodes < 0) {
            firstNodes = choosing();
            effort.allow(effort.limit() / FIRST_AGAINST_REST);
        }
        Within all = decideOut(within, choice);
        decideIn(all, choice);
    }

    /** Looks at the choices without each joint or aside of this one, and puts it in. */
    private Within decideOut(Within within, Choice choice) {
        Within decided = within;
        BitSet joints = (BitSet) choice.joints().clone();
        joints.andNot(certain(within));
        for (int joint : Numbers.in(joints)) {
            explore(decided.withoutJoint(joint), choice.rank());
            decided = decided.withJoint(joint);
        }
        BitSet asides = (BitSet) choice.asides().clone();
        asides.andNot(within.inAsides());
        for (int part : Numbers.in(asides)) {
            explore(decided.withoutAside(part), choice.rank());
            decided = decided.withAside(part);
        }
        return decided;
    }

    /** With all of the choice in: looks at what opening more, or moving more aside, could save in set-up. */
    private void decideIn(Within all, Choice choice) {
        Within within = all;
        long cheap = cheapBound(choice.joints()) * LeastWork.SCALE;
        while (choice.rank() + cheap < bestRank) {
            Undecided undecided = worthwhile(within, choice.rank(), cheap);
            Order order = relaxed(choice, undecided);
            long rank = choice.rank() + order.bound() * LeastWork.SCALE;
            if (rank >= bestRank) {
                return;
            }
            Undecided support = support(order, choice, undecided);
            if (support.isEmpty() || usedUp()) {
                openRank = Math.min(openRank, rank);
                return;
            }
            int joint = support.joints().nextSetBit(0);
            if (joint >= 0) {
                explore(within.withJoint(joint), rank);
                within = within.withoutJoint(joint);
            } else {
                int part = support.asides().nextSetBit(0);
                explore(within.withAside(part), rank);
                within = within.withoutAside(part);
            }
        }
    }

    /** Joints and asides that are neither in nor out. */
    private record Undecided(BitSet joints, BitSet asides) {
        boolean isEmpty() {
            return joints.isEmpty() && asides.isEmpty();
        }
    }

    /** What is undecided and could be in a choice below the best, as far as is known. */
    private Undecided worthwhile(Within within, long rank, long cheap) {
        BitSet joints = new BitSet();
        BitSet asides = new BitSet();
        BitSet certain = certain(within);
        BitSet forbidden = demand.forbidden();
        Room room = leastWork.room(within);
        for (int joint = 0; joint < network.joints(); joint++) {
            if (!certain.get(joint)
                    && !forbidden.get(joint)
                    && !within.outJoints().get(joint)
                    && room.mayHoldJoint(joint, rank, bestRank - cheap)) {
                joints.set(joint);
            }
        }
        for (int part : Numbers.in(network.asides())) {
            if (!within.inAsides().get(part)
                    && !within.outAsides().get(part)
                    && room.mayHoldAside(part, bestRank - cheap)) {
                asides.set(part);
            }
        }
        nodesOfRoom += room.nodes();
        return new Undecided(joints, asides);
    }

    private Order relaxed(Choice choice, Undecided undecided) {
        if (choice.joints().cardinality() > MOST_TO_ORDER) {
            return new Order(List.of(), 0, cheapBound(choice.joints()), false);
        }
        BitSet asides = (BitSet) choice.asides().clone();
        asides.or(undecided.asides());
        UndoProblem problem = new UndoProblem(network, choice.joints(), undecided.joints(), asides);
        return named(least(problem), problem);
    }

    private Order least(UndoProblem problem) {
        Ordering ordering = new Ordering(problem, Math.min(STATES, statesLeft));
        Order order = ordering.search();
        statesLeft -= ordering.looked();
        return order;
    }

    private static Order named(Order order, UndoProblem problem) {
        List<Integer> joints = new ArrayList<>();
        for (int thing : order.things()) {
            joints.add(problem.joint(thing));
        }
        return new Order(joints, order.cost(), order.bound(), order.found());
    }

    /** What the first joint of the order that could not be opened without it needs of what is undecided. */
    private Undecided support(Order order, Choice choice, Undecided undecided) {
        Accessibility access = new Accessibility(network);
        BitSet open = new BitSet();
        for (int joint : order.things()) {
            if (!access.canOpen(joint, open, choice.asides())) {
                return smallest(access, joint, open, choice, undecided);
            }
            open.set(joint);
        }
        return new Undecided(new BitSet(), new BitSet());
    }

    private Undecided smallest(Accessibility access, int joint, BitSet open, Choice choice, Undecided undecided) {
        BitSet joints = (BitSet) undecided.joints().clone();
        BitSet asides = (BitSet) undecided.asides().clone();
        BitSet allOpen = (BitSet) open.clone();
        allOpen.or(joints);
        BitSet allAsides = (BitSet) choice.asides().clone();
        allAsides.or(asides);
        for (int other : Numbers.in(undecided.joints())) {
            allOpen.clear(other);
            boolean needed = !access.canOpen(joint, allOpen, allAsides);
            allOpen.set(other, needed);
            joints.set(other, needed);
        }
        for (int part : Numbers.in(undecided.asides())) {
            allAsides.clear(part);
            boolean needed = !access.canOpen(joint, allOpen, allAsides);
            allAsides.set(part, needed);
            asides.set(part, needed);
        }
        return new Undecided(joints, asides);
    }

    private BitSet certain(Within within) {
        BitSet certain = demand.required();
        certain.or(within.inJoints());
        return certain;
    }

    /** Set-up that opening the joints needs in whatever order. */
    private long cheapBound(BitSet joints) {
        List<Joint> needed = new ArrayList<>();
        for (int joint = joints.nextSetBit(0); joint >= 0; joint = joints.nextSetBit(joint + 1)) {
            needed.add(network.assembly().joints().get(joint));
        }
        return Attributes.leastSetup(needed, network.assembly().sheet().setups());
    }

    /** Orders a choice, and keeps it if it is the best so far. */
    private void consider(Choice choice) {
        BitSet key = key(choice);
        Order order = orders.get(key);
        if (order == null) {
            order = ordered(choice);
            orders.put(key, order);
        }
        if (!order.found()) {
            return;
        }
        Replay replay = new Replay(network, choice.asides());
        List<Move> moves = new ArrayList<>(replay.moves(order.things()));
        var selection = Selections.of(demand, choice.joints(), replay.used());
        long rank = (selection.work().millionths() + order.cost()) * LeastWork.SCALE
                + choice.joints().cardinality();
        if (rank < bestRank) {
            bestRank = rank;
            best = new Course(selection, moves, new Minutes(order.cost()), false, Minutes.ZERO);
        }
    }

    private BitSet key(Choice choice) {
        BitSet key = (BitSet) choice.joints().clone();
        for (int part : Numbers.in(choice.asides())) {
            key.set(network.joints() + part);
        }
        return key;
    }

    private Order ordered(Choice choice) {
        if (choice.joints().cardinality() > MOST_TO_ORDER) {
            return new LongWay(network, choice.joints(), choice.asides()).order();
        }
        UndoProblem problem = new UndoProblem(network, choice.joints(), new BitSet(), choice.asides());
        return named(least(problem), problem);
    }
}
