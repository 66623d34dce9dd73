package putback.plan.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import putback.plan.oracle.Draft.JointDraft;
import putback.plan.oracle.Draft.PartDraft;
import putback.sheet.Aside;
import putback.sheet.LetsGo;
import putback.sheet.Where;

/** Puts parts in the way of joints: mostly what was attached later and is near, sometimes anything. */
final class Hindrances {
    private final Draft draft;

    Hindrances(Draft draft) {
        this.draft = draft;
    }

    void add() {
        for (JointDraft joint : draft.joints) {
            boolean body = joint.joins.contains(Draft.BODY);
            joint.bench = !body && draft.chance(0.07);
            addClauses(joint);
            addOrder(joint);
            if (draft.chance(0.08)) {
                spoil(joint);
            }
            if (draft.chance(0.2)) {
                letGo(joint);
            }
        }
        for (int part = 1; part < draft.parts.size(); part++) {
            if (draft.chance(0.3)) {
                draft.parts.get(part).aside = aside(part);
            }
        }
    }

    private void addClauses(JointDraft joint) {
        int clauses = draft.chance(0.62) ? draft.chance(0.3) ? 2 : 1 : 0;
        for (int i = 0; i < clauses; i++) {
            TreeSet<String> members = new TreeSet<>();
            int size = draft.chance(0.6) ? 1 : draft.chance(0.7) ? 2 : 3;
            for (int k = 0; k < size; k++) {
                int part = blocker(joint);
                if (part != Draft.BODY) {
                    members.add(written(joint, part));
                }
            }
            if (!members.isEmpty()) {
                joint.behind.add(List.copyOf(members));
            }
        }
    }

    /** The body when nothing suitable was found. */
    private int blocker(JointDraft joint) {
        List<Integer> candidates = new ArrayList<>();
        double kind = draft.random.nextDouble();
        int outermost = joint.joins.stream().mapToInt(part -> part).max().orElseThrow();
        for (int part = 1; part < draft.parts.size(); part++) {
            boolean outer = part > outermost && part <= outermost + 5;
            boolean near = Math.abs(part - outermost) <= 4;
            if (!joint.joins.contains(part) && (kind < 0.75 ? outer : kind < 0.9 ? near : true)) {
                candidates.add(part);
            }
        }
        return candidates.isEmpty() ? Draft.BODY : draft.any(candidates);
    }

    private String written(JointDraft joint, int part) {
        PartDraft found = draft.parts.get(part);
        boolean sidedJoint = !draft.once(joint);
        boolean acrossAllowed = sidedJoint && !found.shared;
        return acrossAllowed && draft.chance(0.1) ? "other." + found.id : found.id;
    }

    private void addOrder(JointDraft joint) {
        if (draft.chance(0.13)) {
            joint.after.addAll(other(joint, draft.chance(0.85)));
        }
        if (draft.chance(0.15)) {
            joint.aheadOf.addAll(other(joint, draft.chance(0.5)));
        }
    }

    /** A joint that is near in number; one side's own joints are never named. */
    private List<String> other(JointDraft joint, boolean later) {
        int here = draft.joints.indexOf(joint);
        int there = here + (later ? 1 : -1) * (1 + draft.random.nextInt(4));
        if (there < 0 || there >= draft.joints.size() || draft.joints.get(there).where != Where.EACH_SIDE) {
            return List.of();
        }
        JointDraft found = draft.joints.get(there);
        boolean across = !draft.once(joint) && !draft.once(found) && draft.chance(0.2);
        return List.of(across ? "other." + found.id : found.id);
    }

    private void spoil(JointDraft joint) {
        int part = draft.any(joint.joins);
        if (part != Draft.BODY) {
            joint.spoils.add(draft.parts.get(part).id);
        }
    }

    private void letGo(JointDraft joint) {
        int part = draft.any(joint.joins);
        if (part != Draft.BODY && !draft.parts.get(part).tether) {
            String aid = draft.any(List.of("strap", "strap", "jack", "jack", "spring compressor", "locking pliers"));
            draft.parts.get(part).spring |= aid.equals("spring compressor");
            joint.letsGo.add(new LetsGo(draft.parts.get(part).id, aid, aid.equals("jack") && draft.chance(0.5)));
        }
    }

    private Aside aside(int part) {
        boolean once = draft.parts.get(part).shared;
        List<String> opens = new ArrayList<>();
        for (int j : draft.jointsOf(part)) {
            JointDraft joint = draft.joints.get(j);
            if (joint.where == Where.EACH_SIDE && once == draft.once(joint) && draft.chance(0.55)) {
                opens.add(joint.id);
            }
        }
        if (opens.isEmpty() && draft.chance(0.5)) {
            JointDraft near = draft.joints.get(draft.random.nextInt(draft.joints.size()));
            if (near.where == Where.EACH_SIDE) {
                opens.add(near.id);
            }
        }
        return new Aside(opens, draft.minutes(0.6), draft.chance(0.7) ? "strap" : null);
    }
}
