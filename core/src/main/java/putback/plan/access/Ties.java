package putback.plan.access;

import java.util.Arrays;
import java.util.BitSet;
import org.jspecify.annotations.Nullable;
import putback.sheet.Assembly;

/**
 * Which parts hang together while some joints are open.
 *
 * <p>Two parts are held together when a chain of closed joints connects them without passing through a tether; a
 * tether is held to what its closed joints touch. An instance can be rebuilt for another set of open joints.
 */
public final class Ties {
    private final Network network;
    private final int[] rigid;
    private final int[] any;
    private final boolean[] open;
    private @Nullable BitSet released;
    private boolean rigidIsCurrent;
    private boolean anyIsCurrent;

    public Ties(Network network) {
        this.network = network;
        this.rigid = new int[network.parts()];
        this.any = new int[network.parts()];
        this.open = new boolean[network.joints()];
        rebuild(new BitSet());
    }

    /** How the parts of a car hang together while the given joints are open. */
    public static Ties of(Assembly assembly, BitSet openJoints) {
        Ties ties = new Ties(Network.of(assembly));
        ties.rebuild(openJoints);
        return ties;
    }

    /** As the parts hang together while these joints are open; worked out when it is first asked for. */
    public void rebuild(BitSet openJoints) {
        rebuild(openJoints, null);
    }

    /**
     * As if every part that is not released were tied to the body too. With it, a separation counts only where all the
     * parts that leave are released.
     *
     * <p>Neither set is kept: later changes of them are not seen.
     */
    public void rebuild(BitSet openJoints, @Nullable BitSet releasedParts) {
        Arrays.fill(open, false);
        for (int joint = openJoints.nextSetBit(0); joint >= 0; joint = openJoints.nextSetBit(joint + 1)) {
            open[joint] = true;
        }
        released = releasedParts == null ? null : (BitSet) releasedParts.clone();
        rigidIsCurrent = false;
        anyIsCurrent = false;
    }

    private void buildRigid() {
        reset(rigid);
        BitSet free = released;
        if (free != null) {
            for (int part = 1; part < rigid.length; part++) {
                rigid[part] = network.tether[part] || free.get(part) ? part : 0;
            }
        }
        int[] pairs = network.rigidPairs;
        for (int i = 0; i < pairs.length; i += 3) {
            if (!open[pairs[i]]) {
                unite(rigid, pairs[i + 1], pairs[i + 2]);
            }
        }
        flatten(rigid);
        rigidIsCurrent = true;
    }

    /** The smaller index is the root, so each link but one leads to a part whose own is final already. */
    private static void flatten(int[] links) {
        for (int part = 1; part < links.length; part++) {
            links[part] = links[links[part]];
        }
    }

    /** What is held together, and what tethers tie to it. */
    private void buildAny() {
        if (!rigidIsCurrent) {
            buildRigid();
        }
        System.arraycopy(rigid, 0, any, 0, any.length);
        for (int tether : network.tethers) {
            if (gluedToBody(tether)) {
                unite(any, tether, 0);
            }
            for (int joint : network.jointsOf[tether]) {
                if (!open[joint]) {
                    for (int part : network.joins[joint]) {
                        unite(any, tether, part);
                    }
                }
            }
        }
        flatten(any);
        anyIsCurrent = true;
    }

    private static void reset(int[] links) {
        for (int i = 0; i < links.length; i++) {
            links[i] = i;
        }
    }

    private static int root(int[] links, int part) {
        int at = part;
        int above = links[at];
        while (above != at) {
            int next = links[above];
            links[at] = next;
            at = next;
            above = links[at];
        }
        return at;
    }

    /** The smaller index becomes the root, so that the body always is one. */
    private static void unite(int[] links, int a, int b) {
        if (links[a] == links[b]) {
            return;
        }
        int rootA = root(links, a);
        int rootB = root(links, b);
        if (rootA < rootB) {
            links[rootB] = rootA;
        } else {
            links[rootA] = rootB;
        }
    }

    /** Whether a chain of closed joints connects the two without passing through a tether. */
    public boolean heldTogether(int partA, int partB) {
        if (partA == partB) {
            return true;
        }
        if (!rigidIsCurrent) {
            buildRigid();
        }
        if (!network.tether[partA] && !network.tether[partB]) {
            return rigid[partA] == rigid[partB];
        }
        if (network.tether[partA] && network.tether[partB]) {
            return tethersHeld(partA, partB);
        }
        return network.tether[partA] ? touches(partA, rigid[partB]) : touches(partB, rigid[partA]);
    }

    /** Whether a closed joint of the tether touches a part of the group with this root. */
    private boolean touches(int tether, int group) {
        if (group == 0 && gluedToBody(tether)) {
            return true;
        }
        for (int joint : network.jointsOf[tether]) {
            if (!open[joint]) {
                for (int part : network.joins[joint]) {
                    if (!network.tether[part] && rigid[part] == group) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean gluedToBody(int part) {
        return released != null && !released.get(part);
    }

    private boolean tethersHeld(int a, int b) {
        if (gluedToBody(a) && touches(b, 0)) {
            return true;
        }
        for (int joint : network.jointsOf[a]) {
            if (open[joint]) {
                continue;
            }
            for (int part : network.joins[joint]) {
                if (part == b || !network.tether[part] && touches(b, rigid[part])) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether it is held together with the body. */
    public boolean heldToBody(int part) {
        return heldTogether(part, 0);
    }

    /** Whether nothing at all, tethers included, ties it to the body. */
    public boolean off(int part) {
        return !tied(part, 0);
    }

    /** Whether any chain of closed joints, tethers included, connects the two. */
    public boolean tied(int partA, int partB) {
        if (!anyIsCurrent) {
            buildAny();
        }
        return any[partA] == any[partB];
    }

    /** Whether it dangles: neither held to the body nor off. */
    public boolean hung(int part) {
        return !heldToBody(part) && !off(part);
    }

    /** Whether the part is held together with no part that the joint joins. */
    public boolean separated(int part, int joint) {
        for (int joined : network.joins[joint]) {
            if (heldTogether(part, joined)) {
                return false;
            }
        }
        return true;
    }

    /** Whether every part that the joint joins is off the car. */
    public boolean allOff(int joint) {
        for (int part : network.joins[joint]) {
            if (!off(part)) {
                return false;
            }
        }
        return true;
    }
}
