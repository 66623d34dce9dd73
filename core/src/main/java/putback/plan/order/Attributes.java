package putback.plan.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import putback.quantity.Length;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.JointEntry;
import putback.sheet.Setups;
import putback.sheet.Side;

/**
 * What joints ask for when they are opened (height, side, station, tool) as numbers from 1, with 0 for what a joint does
 * not ask for, and the cost of each change.
 */
public final class Attributes {
    private static final int KINDS = 4;
    private static final Object NOTHING = "nothing";

    private final int[][] asked;
    private final int[] values = new int[KINDS];
    private final long[] cost;

    /**
     * @param joints in the order of the things to put in order
     */
    public Attributes(List<Joint> joints, Setups setups) {
        asked = new int[joints.size()][KINDS];
        cost = new long[] {
            setups.height().millionths(),
            setups.side().millionths(),
            setups.station().millionths(),
            setups.tool().millionths()
        };
        List<Map<Object, Integer>> seen = new ArrayList<>();
        for (int kind = 0; kind < KINDS; kind++) {
            seen.add(new HashMap<>());
        }
        for (int i = 0; i < asked.length; i++) {
            Object[] wanted = wanted(joints.get(i));
            for (int kind = 0; kind < KINDS; kind++) {
                asked[i][kind] = number(seen.get(kind), wanted[kind]);
            }
        }
        for (int kind = 0; kind < KINDS; kind++) {
            values[kind] = seen.get(kind).size();
        }
    }

    private static int number(Map<Object, Integer> seen, Object value) {
        if (NOTHING.equals(value)) {
            return 0;
        }
        Integer known = seen.get(value);
        if (known == null) {
            known = seen.size() + 1;
            seen.put(value, known);
        }
        return known;
    }

    private static Object[] wanted(Joint joint) {
        JointEntry entry = joint.entry();
        return new Object[] {
            entry.height() == Height.ANY ? NOTHING : entry.height(),
            joint.side() == Side.NONE ? NOTHING : joint.side(),
            entry.station(),
            tool(entry)
        };
    }

    /** The joint's tool, else its hex, else bare hands, which ask for nothing. */
    private static Object tool(JointEntry entry) {
        String tool = entry.tool();
        if (tool != null) {
            return tool.equals("hand") ? NOTHING : tool;
        }
        Length hex = entry.fastener().hex();
        return hex == null ? NOTHING : (Object) hex.millimetres();
    }

    /** Minutes of set-up, in millionths, when the given joints are opened in the order given. */
    public static long setup(List<Joint> inOrder, Setups setups) {
        Attributes attributes = new Attributes(inOrder, setups);
        int state = 0;
        long sum = 0;
        for (int i = 0; i < inOrder.size(); i++) {
            sum += attributes.cost(state, i);
            state = attributes.after(state, i);
        }
        return sum;
    }

    /** Set-up that opening the joints needs in whatever order: every further value of an attribute is one change. */
    public static long leastSetup(List<Joint> joints, Setups setups) {
        Attributes attributes = new Attributes(joints, setups);
        long sum = 0;
        for (int kind = 0; kind < KINDS; kind++) {
            sum += attributes.cost[kind] * Math.max(0, attributes.values[kind] - 1);
        }
        return sum;
    }

    /** The cost of going on to a joint from a state; what has not been set yet costs nothing. */
    long cost(int state, int thing) {
        int rest = state;
        long sum = 0;
        for (int kind = 0; kind < KINDS; kind++) {
            int is = rest % (values[kind] + 1);
            rest /= values[kind] + 1;
            int wants = asked[thing][kind];
            if (wants != 0 && is != 0 && wants != is) {
                sum += cost[kind];
            }
        }
        return sum;
    }

    int after(int state, int thing) {
        int rest = state;
        int place = 1;
        int next = 0;
        for (int kind = 0; kind < KINDS; kind++) {
            int is = rest % (values[kind] + 1);
            rest /= values[kind] + 1;
            int wants = asked[thing][kind];
            next += place * (wants != 0 ? wants : is);
            place *= values[kind] + 1;
        }
        return next;
    }

    /** For each kind and value, the things that ask for it. */
    long[][] askers() {
        long[][] masks = new long[KINDS][];
        for (int kind = 0; kind < KINDS; kind++) {
            masks[kind] = new long[values[kind] + 1];
            for (int thing = 0; thing < asked.length; thing++) {
                masks[kind][asked[thing][kind]] |= 1L << thing;
            }
        }
        return masks;
    }

    /** Each value still asked for and not at hand costs its change at least once. */
    long bound(long[][] askers, long rest, int state) {
        int coded = state;
        long sum = 0;
        for (int kind = 0; kind < KINDS; kind++) {
            int is = coded % (values[kind] + 1);
            coded /= values[kind] + 1;
            int missing = 0;
            for (int value = 1; value < askers[kind].length; value++) {
                missing += value != is && (askers[kind][value] & rest) != 0 ? 1 : 0;
            }
            sum += cost[kind] * Math.max(0, is == 0 ? missing - 1 : missing);
        }
        return sum;
    }
}
