package putback.app.ladder;

import java.util.Arrays;
import java.util.BitSet;
import putback.plan.Plan;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;

/** How many layers of other fixings of the plan lie over each joint. */
final class Depths {
    private final int[] layers;

    private Depths(int[] layers) {
        this.layers = layers;
    }

    /** Opens whatever can be reached, layer by layer, until all joints of the plan are open. */
    static Depths of(Plan plan) {
        Network network = Network.of(plan.assembly());
        Accessibility accessibility = new Accessibility(network);
        BitSet closed = bits(plan.selection().open());
        BitSet asides = bits(plan.selection().aside());
        BitSet open = new BitSet();
        int[] layers = new int[plan.assembly().joints().size()];
        Arrays.fill(layers, -1);
        for (int layer = 0; !closed.isEmpty(); layer++) {
            BitSet reached = new BitSet();
            for (int joint = closed.nextSetBit(0); joint >= 0; joint = closed.nextSetBit(joint + 1)) {
                if (accessibility.canOpen(joint, open, asides)) {
                    reached.set(joint);
                    layers[joint] = layer;
                }
            }
            if (reached.isEmpty()) {
                break;
            }
            open.or(reached);
            closed.andNot(reached);
        }
        return new Depths(layers);
    }

    private static BitSet bits(Iterable<Integer> indices) {
        BitSet bits = new BitSet();
        for (int index : indices) {
            bits.set(index);
        }
        return bits;
    }

    int of(int joint) {
        return Math.max(0, layers[joint]);
    }
}
