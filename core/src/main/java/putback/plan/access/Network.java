package putback.plan.access;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
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
    final int[][] joins;
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
        joins = joints.stream().map(joint -> array(joint.joins())).toArray(int[][]::new);
        jointsOf = IntStream.range(0, parts.size()).mapToObj(this::joining).toArray(int[][]::new);
        tether = new boolean[parts.size()];
        bench = new boolean[joints.size()];
        clauses = joints.stream().map(Network::accessClauses).toArray(int[][][]::new);
        after = joints.stream().map(joint -> array(joint.after())).toArray(int[][]::new);
        asideOpens = parts.stream().map(part -> array(part.asideOpens())).toArray(int[][]::new);
        brings = joints.stream().map(this::followUpIndices).toArray(int[][]::new);
        behindInOrder = new int[joints.size()][];
        for (int i = 0; i < joints.size(); i++) {
            bench[i] = joints.get(i).entry().station() == Station.BENCH;
            behindInOrder[i] = aheadOf(i);
        }
        for (int i = 0; i < parts.size(); i++) {
            tether[i] = parts.get(i).isTether();
        }
        hasBench = IntStream.range(0, bench.length).anyMatch(i -> bench[i]);
    }

    public static Network of(Assembly assembly) {
        return new Network(assembly);
    }

    private static int[] array(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }

    private int[] joining(int part) {
        return IntStream.range(0, joins.length)
                .filter(j -> contains(joins[j], part))
                .toArray();
    }

    /** The joints that, opened in the same plan, come before the given one. */
    private int[] aheadOf(int joint) {
        return assembly.joints().stream()
                .filter(other -> other.aheadOf().contains(joint))
                .mapToInt(Joint::index)
                .toArray();
    }

    private int[] followUpIndices(Joint joint) {
        List<String> ids =
                assembly.sheet().followUps().stream().map(FollowUp::id).toList();
        return joint.entry().brings().stream().mapToInt(ids::indexOf).distinct().toArray();
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
            joint.reachOnWheels().stream().filter(c -> !all.contains(c)).forEach(all::add);
        }
        return all.stream().map(Network::array).toArray(int[][]::new);
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
        IntStream.range(0, parts()).filter(this::canGoAside).forEach(all::set);
        return all;
    }
}
