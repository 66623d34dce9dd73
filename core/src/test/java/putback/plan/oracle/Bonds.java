package putback.plan.oracle;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import putback.sheet.Assembly;
import putback.sheet.Joint;

/**
 * What is held, tied, hung and off while some joints are open, found by walking along closed joints.
 *
 * <p>Reading: "a chain of closed joints connects them without passing through a tether" allows a tether at either end of
 * the chain, never in between. So a hose clipped to a bracket is held together with all that the bracket is held to,
 * and two tethers that one closed joint joins are held together. The body is a part like others: two parts bolted to
 * it are held together. A part is held together with itself.
 */
final class Bonds {
    private final Assembly assembly;
    private final List<List<Integer>> jointsOf;
    private final BitSet open;
    /** Number of the rigid piece of each part; -1 for a tether. */
    private final int[] piece;
    /** Number of everything that is tied together, tethers included. */
    private final int[] bundle;

    Bonds(Assembly assembly, List<List<Integer>> jointsOf, BitSet open) {
        this.assembly = assembly;
        this.jointsOf = jointsOf;
        this.open = open;
        this.piece = flood(false);
        this.bundle = flood(true);
    }

    boolean held(int a, int b) {
        if (a == b) {
            return true;
        }
        boolean tetherA = isTether(a);
        boolean tetherB = isTether(b);
        if (!tetherA && !tetherB) {
            return piece[a] == piece[b];
        }
        if (tetherA && tetherB) {
            return touched(a).intersects(touched(b)) || oneClosedJointJoins(a, b);
        }
        return tetherA ? touched(a).get(piece[b]) : touched(b).get(piece[a]);
    }

    boolean heldToBody(int part) {
        return held(part, 0);
    }

    boolean off(int part) {
        return bundle[part] != bundle[0];
    }

    boolean hung(int part) {
        return !off(part) && !heldToBody(part);
    }

    /** Number of the rigid piece that a part belongs to, or -1 for a tether. */
    int pieceOf(int part) {
        return piece[part];
    }

    /** Whether two parts are tied, tethers included. */
    boolean tied(int a, int b) {
        return bundle[a] == bundle[b];
    }

    /** The rigid pieces that closed joints of a tether touch. */
    BitSet touched(int tether) {
        BitSet pieces = new BitSet();
        for (int j : jointsOf.get(tether)) {
            if (!open.get(j)) {
                for (int part : assembly.joints().get(j).joins()) {
                    if (!isTether(part)) {
                        pieces.set(piece[part]);
                    }
                }
            }
        }
        return pieces;
    }

    private boolean oneClosedJointJoins(int a, int b) {
        for (int j : jointsOf.get(a)) {
            if (!open.get(j) && assembly.joints().get(j).joins().contains(b)) {
                return true;
            }
        }
        return false;
    }

    private boolean isTether(int part) {
        return assembly.parts().get(part).isTether();
    }

    private int[] flood(boolean throughTethers) {
        int[] label = new int[assembly.parts().size()];
        Arrays.fill(label, -1);
        int next = 0;
        for (int start = 0; start < label.length; start++) {
            if (label[start] < 0 && (throughTethers || !isTether(start))) {
                spread(start, next++, label, throughTethers);
            }
        }
        return label;
    }

    private void spread(int start, int number, int[] label, boolean throughTethers) {
        Deque<Integer> waiting = new ArrayDeque<>();
        label[start] = number;
        waiting.add(start);
        while (!waiting.isEmpty()) {
            for (int j : jointsOf.get(waiting.remove())) {
                if (open.get(j)) {
                    continue;
                }
                Joint joint = assembly.joints().get(j);
                for (int part : joint.joins()) {
                    if (label[part] < 0 && (throughTethers || !isTether(part))) {
                        label[part] = number;
                        waiting.add(part);
                    }
                }
            }
        }
    }
}
