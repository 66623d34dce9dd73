package putback.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Ties;
import putback.plan.order.Move;
import putback.plan.selection.Demand;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.plan.steps.Step;
import putback.sheet.Assembly;
import putback.sheet.Joint;

/** Why each joint of a plan is opened: the chain from it back to what is renewed. */
public final class Reasons {
    private final Network network;
    private final Assembly assembly;
    private final Demand demand;
    private final Wanted wanted;
    private final Map<Integer, Link> links = new HashMap<>();

    /**
     * One link of the chain.
     *
     * @param next the joint that needs this one, or -1 at the end
     * @param ids what stands between the two: a part in the way, a part that is renewed
     * @param sentence says it
     */
    private record Link(int next, List<String> ids, String sentence) {}

    private Reasons(Assembly assembly, Wanted wanted) {
        this.assembly = assembly;
        this.network = Network.of(assembly);
        this.demand = Demand.of(network, wanted);
        this.wanted = wanted;
    }

    /** The reasons of a way apart. */
    public static Reasons of(Assembly assembly, Wanted wanted, List<Move> moves) {
        Reasons reasons = new Reasons(assembly, wanted);
        reasons.link(moves);
        return reasons;
    }

    /** The reasons of a plan. */
    public static Reasons of(Plan plan) {
        return of(plan.assembly(), plan.wanted(), plan.moves());
    }

    private void link(List<Move> moves) {
        List<Integer> order = new ArrayList<>();
        BitSet asides = new BitSet();
        for (Move move : moves) {
            if (move instanceof Move.Open open) {
                order.add(open.joint());
            } else if (move instanceof Move.MoveAside aside) {
                asides.set(aside.part());
            }
        }
        List<Integer> known = new ArrayList<>();
        for (int joint : order) {
            Link own = ownReason(joint);
            if (own != null) {
                links.put(joint, own);
                known.add(joint);
            }
        }
        for (int i = 0; i < known.size(); i++) {
            for (int needed : needs(known.get(i), order, asides)) {
                if (links.putIfAbsent(needed, needed(needed, known.get(i), asides)) == null) {
                    known.add(needed);
                }
            }
            spoilt(known.get(i), known);
        }
    }

    /** A joint of something that is to be renewed. */
    private @Nullable Link ownReason(int joint) {
        for (Target target : wanted.targets()) {
            if (demand.required().get(joint) && joins(target, joint)) {
                return new Link(
                        -1,
                        List.of(target.id()),
                        name(joint) + " holds " + target.name() + ", which is to be renewed.");
            }
        }
        return null;
    }

    private boolean joins(Target target, int joint) {
        for (int part : network.joins(joint)) {
            boolean inside = target instanceof Target.OfPart one
                    ? one.part().index() == part
                    : target instanceof Target.OfUnit unit
                            && unit.unit().parts().contains(part);
            if (inside) {
                return true;
            }
        }
        return false;
    }

    /** The joints opened before this one without which it could not be opened. */
    private List<Integer> needs(int joint, List<Integer> order, BitSet asides) {
        BitSet open = new BitSet();
        List<Integer> before = order.subList(0, order.indexOf(joint));
        for (int other : before) {
            open.set(other);
        }
        Accessibility access = new Accessibility(network);
        List<Integer> needed = new ArrayList<>();
        for (int other : before) {
            open.clear(other);
            if (!access.canOpen(joint, open, asides)) {
                open.set(other);
                needed.add(other);
            }
        }
        return needed;
    }

    private Link needed(int joint, int by, BitSet asides) {
        for (int after : network.after(by)) {
            if (after == joint) {
                return new Link(by, List.of(), name(joint) + " comes before " + name(by) + ".");
            }
        }
        int blocker = blocker(joint, by, asides);
        if (blocker < 0) {
            return new Link(
                    by,
                    List.of(),
                    name(joint) + " ties the parts of " + name(by) + " to the car, which is opened on the bench.");
        }
        String part = assembly.parts().get(blocker).name();
        String clears = asides.get(blocker) ? " lets " + part + " be moved aside" : " clears " + part;
        return new Link(
                by,
                List.of(assembly.parts().get(blocker).id()),
                name(joint) + clears + ", which is in the way of " + name(by) + ".");
    }

    /** The part in the way of a joint that opening the other clears; -1 when there is none. */
    private int blocker(int joint, int by, BitSet asides) {
        Ties ties = new Ties(network);
        BitSet open = new BitSet();
        open.set(0, network.joints());
        open.clear(joint);
        open.clear(by);
        ties.rebuild(open);
        int fallback = -1;
        for (int[] clause : network.clauses(by)) {
            for (int part : clause) {
                if (!ties.separated(part, by)
                        || assembly.parts().get(part).asideOpens().contains(joint) && asides.get(part)) {
                    return part;
                }
                for (int joined : network.joins(joint)) {
                    fallback = joined == part ? part : fallback;
                }
            }
        }
        if (fallback >= 0) {
            return fallback;
        }
        int[][] clauses = network.clauses(by);
        return clauses.length > 0 && !network.isBench(by) ? clauses[0][0] : -1;
    }

    /** Joints that are opened because this one ruins a part. */
    private void spoilt(int joint, List<Integer> known) {
        for (int part : demand.spoils(joint)) {
            for (int other : network.jointsOf(part)) {
                String name = assembly.parts().get(part).name();
                Link link = new Link(
                        joint,
                        List.of(assembly.parts().get(part).id()),
                        name(other) + " holds " + name + ", which opening " + name(joint) + " ruins.");
                if (other != joint && links.putIfAbsent(other, link) == null) {
                    known.add(other);
                }
            }
        }
    }

    private String name(int joint) {
        return assembly.joints().get(joint).name();
    }

    /** Ids from a joint back to what is renewed, the joint first. */
    public List<String> chain(Joint joint) {
        List<String> ids = new ArrayList<>();
        for (int at = joint.index(); at >= 0 && ids.size() < 2 * network.joints() + 2; ) {
            ids.add(assembly.joints().get(at).id());
            Link link = links.get(at);
            if (link == null) {
                break;
            }
            ids.addAll(link.ids());
            at = link.next();
        }
        return ids;
    }

    /** The same as sentences, one for each link. */
    public List<String> sentences(Joint joint) {
        List<String> sentences = new ArrayList<>();
        for (int at = joint.index(); at >= 0 && sentences.size() <= network.joints(); ) {
            Link link = links.get(at);
            if (link == null) {
                sentences.add(name(at) + " is opened because that saves set-up.");
                break;
            }
            sentences.add(link.sentence());
            at = link.next();
        }
        return sentences;
    }

    /** Ids from a step back to what is renewed. */
    List<String> chain(Step step, List<Move> moves) {
        Joint joint = step.joint();
        if (joint != null) {
            return chain(joint);
        }
        List<String> ids = new ArrayList<>();
        if (step.followUp() != null) {
            ids.add(step.followUp().id());
            Joint bringing = bringing(step.followUp().id(), moves);
            if (bringing != null) {
                ids.addAll(chain(bringing));
            }
        } else if (step.part() != null) {
            ids.add(step.part().id());
            Joint holding = holding(step.part().index(), moves);
            if (holding != null) {
                ids.addAll(chain(holding));
            }
        }
        return ids;
    }

    private @Nullable Joint bringing(String followUp, List<Move> moves) {
        for (Joint joint : opened(moves)) {
            if (joint.entry().brings().contains(followUp)) {
                return joint;
            }
        }
        return null;
    }

    private @Nullable Joint holding(int part, List<Move> moves) {
        for (Joint joint : opened(moves)) {
            if (joint.joins().contains(part)) {
                return joint;
            }
        }
        return null;
    }

    private List<Joint> opened(List<Move> moves) {
        List<Joint> joints = new ArrayList<>();
        for (Move move : moves) {
            if (move instanceof Move.Open open) {
                joints.add(assembly.joints().get(open.joint()));
            }
        }
        return joints;
    }
}
