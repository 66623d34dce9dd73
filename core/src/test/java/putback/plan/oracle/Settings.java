package putback.plan.oracle;

import java.util.ArrayList;
import java.util.List;
import putback.quantity.Length;
import putback.sheet.Assembly;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.JointEntry;
import putback.sheet.Setups;
import putback.sheet.Side;

/**
 * What a joint asks for when it is undone, and what a change of it costs: {@code sequence.setup} of the file format.
 *
 * <p>A state is four numbers, for station, height, side and tool; 0 says that it has not been set yet. Reading: a tool
 * written as a word and a hex are different tools even if they read the same, and two hexes are one tool when they are
 * equally wide.
 */
final class Settings {
    static final int KINDS = 4;
    private static final String HAND = "hand";

    private final int[][] asks;
    private final long[] cost;

    Settings(Assembly assembly) {
        Setups setups = assembly.sheet().setups();
        cost = new long[] {
            setups.station().millionths(),
            setups.height().millionths(),
            setups.side().millionths(),
            setups.tool().millionths()
        };
        List<Object> tools = new ArrayList<>();
        asks = assembly.joints().stream().map(joint -> asks(joint, tools)).toArray(int[][]::new);
    }

    private static int[] asks(Joint joint, List<Object> tools) {
        JointEntry entry = joint.entry();
        int height = entry.height() == Height.ANY ? 0 : 1 + entry.height().ordinal();
        int side = joint.side() == Side.NONE ? 0 : joint.side().ordinal();
        return new int[] {1 + entry.station().ordinal(), height, side, tool(joint, tools)};
    }

    private static int tool(Joint joint, List<Object> tools) {
        String word = joint.entry().tool();
        Length hex = joint.fastener().hex();
        if (HAND.equals(word) || (word == null && hex == null)) {
            return 0;
        }
        Object tool = word != null ? word : hex;
        if (!tools.contains(tool)) {
            tools.add(tool);
        }
        return 1 + tools.indexOf(tool);
    }

    int[] asks(int joint) {
        return asks[joint];
    }

    /** Millionths of a minute that a change of one kind costs. */
    long cost(int kind) {
        return cost[kind];
    }

    /** Changes the state to what the joint asks for, and says what that costs in millionths of a minute. */
    long change(int[] state, int joint) {
        long sum = 0;
        for (int kind = 0; kind < KINDS; kind++) {
            int asked = asks[joint][kind];
            if (asked != 0) {
                sum += state[kind] != 0 && state[kind] != asked ? cost[kind] : 0;
                state[kind] = asked;
            }
        }
        return sum;
    }

    /** Set-up of joints undone in this order. */
    long sequence(List<Integer> order) {
        int[] state = new int[KINDS];
        return order.stream().mapToLong(joint -> change(state, joint)).sum();
    }
}
