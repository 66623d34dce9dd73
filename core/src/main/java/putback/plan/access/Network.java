package putback.plan.access;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import putback.sheet.Aside;
import putback.sheet.Assembly;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Station;

/**
 * An assembly as arrays, for the inner loops of planning. Parts and joints keep their indices; minutes are millionths.
 */
public final class Network {
    private static final int[] NONE = {};

    final int[][] joins;
    /** Each joint with two parts that it joins and that are no tethers, in threes, one after another. */
    final int[] rigidPairs;

    final int[] tethers;
    final int[][] jointsOf;
    final boolean[] tether;
    final boolean[] bench;
    private final Assembly assembly;
    private final int[][][] clauses;
    private final int[][] after;
    private final int[][] behindInOrder;
    private final int[][] asideOpens;
    private final int[][] brings;
    private final boolean hasBench;

    private Network(Assembly assembly) {
        this.assembly = assembly;
        List<Joint> joints = assembly.joints();
        List<Part> parts = assembly.parts();
        joins = new int[joints.size()][];
        bench = new boolean[joints.size()];
        clauses = new int[joints.size()][][];
        after = new int[joints.size()][];
        brings = new int[joints.size()][];
        behindInOrder = new int[joints.size()][];
        boolean anyBench = false;
        for (int i = 0; i < joints.size(); i++) {
            Joint joint = joints.get(i);
            joins[i] = array(joint.joins());
            bench[i] = joint.entry().station() == Station.BENCH;
            anyBench |= bench[i];
            clauses[i] = accessClauses(joint);
            after[i] = array(joint.after());
            brings[i] = followUpIndices(joint);
        }
        hasBench = anyBench;
        fillBehindInOrder(joints);
        jointsOf = new int[parts.size()][];
        tether = new boolean[parts.size()];
        asideOpens = new int[parts.size()][];
        for (int i = 0; i < parts.size(); i++) {
            jointsOf[i] = NONE;
            tether[i] = parts.get(i).isTether();
            asideOpens[i] = array(parts.get(i).asideOpens());
        }
        for (int i = 0; i < joins.length; i++) {
            for (int part : joins[i]) {
                jointsOf[part] = with(jointsOf[part], i);
            }
        }
        rigidPairs = rigidPairs();
        tethers = tethers();
    }

    private int[] rigidPairs() {
        int[] pairs = NONE;
        int used = 0;
        for (int joint = 0; joint < joins.length; joint++) {
            int first = -1;
            for (int part : joins[joint]) {
                if (tether[part]) {
                    continue;
                }
                if (first >= 0) {
                    pairs = used == pairs.length ? Arrays.copyOf(pairs, 2 * used + 48) : pairs;
                    pairs[used++] = joint;
                    pairs[used++] = first;
                    pairs[used++] = part;
                }
                first = first < 0 ? part : first;
            }
        }
        return Arrays.copyOf(pairs, used);
    }

    private int[] tethers() {
        int[] all = NONE;
        for (int part = 0; part < tether.length; part++) {
            all = tether[part] ? with(all, part) : all;
        }
        return all;
    }

    public static Network of(Assembly assembly) {
        return new Network(assembly);
    }

    private static int[] array(List<Integer> list) {
        int[] values = new int[list.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = list.get(i);
        }
        return values;
    }

    /** For each joint those that, opened in the same plan, come before it. */
    private void fillBehindInOrder(List<Joint> joints) {
        Arrays.fill(behindInOrder, new int[0]);
        for (Joint ahead : joints) {
            for (int joint : ahead.aheadOf()) {
                if (!contains(behindInOrder[joint], ahead.index())) {
                    behindInOrder[joint] = with(behindInOrder[joint], ahead.index());
                }
            }
        }
    }

    private static int[] with(int[] values, int value) {
        int[] more = Arrays.copyOf(values, values.length + 1);
        more[values.length] = value;
        return more;
    }

    private int[] followUpIndices(Joint joint) {
        Set<Integer> brought = new LinkedHashSet<>();
        for (String id : joint.entry().brings()) {
            brought.add(followUpIndex(id));
        }
        return array(List.copyOf(brought));
    }

    private int followUpIndex(String id) {
        List<FollowUp> followUps = assembly.sheet().followUps();
        for (int i = 0; i < followUps.size(); i++) {
            if (followUps.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /**
     * What has to be clear before a joint is opened: what is in its way, and, where it is broken loose or tightened on
     * wheels, what the sheet says is in the way there.
     */
    private static int[][] accessClauses(Joint joint) {
        List<List<Integer>> all = new ArrayList<>(joint.behind());
        boolean workedOnWheels = joint.entry().height() == Height.ON_WHEELS
                || joint.entry().breakLooseOnWheels()
                || joint.fastener().tighten() == Height.ON_WHEELS;
        if (workedOnWheels && joint.saysReachOnWheels()) {
            for (List<Integer> clause : joint.reachOnWheels()) {
                if (!all.contains(clause)) {
                    all.add(clause);
                }
            }
        }
        int[][] clauses = new int[all.size()][];
        for (int i = 0; i < clauses.length; i++) {
            clauses[i] = array(all.get(i));
        }
        return clauses;
    }

    static boolean contains(int[] values, int value) {
        for (int v : values) {
            if (v == value) {
                return true;
            }
        }
        return false;
    }

    public Assembly assembly() {
        return assembly;
    }

    public int joints() {
        return joins.length;
    }

    public int parts() {
        return tether.length;
    }

    /** The parts that a joint joins. */
    public int[] joins(int joint) {
        return joins[joint].clone();
    }

    /** The joints that join a part. */
    public int[] jointsOf(int part) {
        return jointsOf[part].clone();
    }

    public boolean isTether(int part) {
        return tether[part];
    }

    public boolean isBench(int joint) {
        return bench[joint];
    }

    boolean hasBench() {
        return hasBench;
    }

    /** Clauses of part indices: one part of each has to be clear before the joint is opened. */
    public int[][] clauses(int joint) {
        return clauses[joint].clone();
    }

    int[][] clausesOf(int joint) {
        return clauses[joint];
    }

    /** Joints that have to be open before the given one. */
    public int[] after(int joint) {
        return after[joint].clone();
    }

    int[] afterOf(int joint) {
        return after[joint];
    }

    /** Joints that come before the given one if they are opened at all. */
    public int[] opensBehind(int joint) {
        return behindInOrder[joint].clone();
    }

    int[] opensBehindOf(int joint) {
        return behindInOrder[joint];
    }

    /** Indices of the follow-ups that opening a joint brings. */
    public int[] brings(int joint) {
        return brings[joint].clone();
    }

    public boolean canGoAside(int part) {
        return assembly.parts().get(part).canGoAside();
    }

    /** Joints that have to be open before a part can be moved aside. */
    public int[] asideOpens(int part) {
        return asideOpens[part].clone();
    }

    int[] asideOpensOf(int part) {
        return asideOpens[part];
    }

    /** Minutes to open and close a joint. */
    public long work(int joint) {
        var entry = assembly.joints().get(joint).entry();
        return entry.open().plus(entry.close()).millionths();
    }

    public long handling(int part) {
        return assembly.parts().get(part).entry().handling().millionths();
    }

    /** Minutes to move a part aside; 0 where it cannot. */
    public long asideWork(int part) {
        Aside aside = assembly.parts().get(part).entry().aside();
        return aside == null ? 0 : aside.minutes().millionths();
    }

    /** All parts that can be moved aside. */
    public BitSet asides() {
        BitSet all = new BitSet();
        for (int part = 0; part < parts(); part++) {
            all.set(part, canGoAside(part));
        }
        return all;
    }
}
