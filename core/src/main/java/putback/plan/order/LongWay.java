package putback.plan.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Numbers;
import putback.plan.access.Ties;
import putback.sheet.Joint;

/**
 * An order for more joints than can be put in order exactly: always the cheapest next one, and among those the one whose
 * tool and place the most accessible joints share.
 */
final class LongWay {
    private final Network network;
    private final BitSet joints;
    private final BitSet asides;
    private final Attributes attributes;
    private final int[] chosen;

    LongWay(Network network, BitSet joints, BitSet asides) {
        this.network = network;
        this.joints = joints;
        this.asides = asides;
        this.chosen = Numbers.in(joints);
        this.attributes = new Attributes(inOrder(), network.assembly().sheet().setups());
    }

    private List<Joint> inOrder() {
        List<Joint> list = new ArrayList<>();
        for (int joint : chosen) {
            list.add(network.assembly().joints().get(joint));
        }
        return list;
    }

    Order order() {
        List<Integer> order = new ArrayList<>();
        BitSet open = new BitSet();
        Ties ties = new Ties(network);
        int state = 0;
        long cost = 0;
        while (order.size() < chosen.length) {
            ties.rebuild(open);
            int next = next(ties, open, state);
            if (next < 0) {
                return new Order(List.of(), Long.MAX_VALUE, 0, false);
            }
            cost += attributes.cost(state, next);
            state = attributes.after(state, next);
            open.set(chosen[next]);
            order.add(chosen[next]);
        }
        return new Order(order, cost, bound(), true);
    }

    private long bound() {
        return Attributes.leastSetup(inOrder(), network.assembly().sheet().setups());
    }

    private int next(Ties ties, BitSet open, int state) {
        List<Integer> ready = new ArrayList<>();
        for (int thing = 0; thing < chosen.length; thing++) {
            int joint = chosen[thing];
            if (!open.get(joint)
                    && Accessibility.inOrder(network, joint, open, joints)
                    && Accessibility.canOpen(network, ties, joint, open, asides)) {
                ready.add(thing);
            }
        }
        int best = -1;
        long bestCost = Long.MAX_VALUE;
        int bestFollowers = -1;
        for (int thing : ready) {
            long cost = attributes.cost(state, thing);
            int after = attributes.after(state, thing);
            int followers = (int) ready.stream()
                    .filter(other -> attributes.cost(after, other) == 0)
                    .count();
            if (cost < bestCost || cost == bestCost && followers > bestFollowers) {
                best = thing;
                bestCost = cost;
                bestFollowers = followers;
            }
        }
        return best;
    }
}
