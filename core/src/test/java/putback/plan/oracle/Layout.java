package putback.plan.oracle;

import java.util.ArrayList;
import java.util.List;
import putback.plan.oracle.Draft.JointDraft;
import putback.plan.oracle.Draft.PartDraft;
import putback.sheet.Where;

/** Grows the parts of a draft outward from the body, as a corner grows: mostly from the part before, tied by tethers. */
final class Layout {
    private final Draft draft;
    /** The first part of the corner that grows. */
    private int first = 1;

    Layout(Draft draft) {
        this.draft = draft;
    }

    /** Corners of about so many joints each, which meet at the body only. */
    void growCorners(int joints, int joinedInEach) {
        while (draft.size() < joints) {
            first = draft.parts.size();
            grow(Math.min(joints, draft.size() + joinedInEach));
        }
    }

    void grow(int joints) {
        while (draft.size() < joints) {
            double kind = draft.random.nextDouble();
            boolean small = draft.parts.size() - first < 2;
            if (small || kind < 0.52) {
                attach(newPart(false));
            } else if (kind < 0.64) {
                lay(newPart(true));
            } else {
                cross();
            }
        }
    }

    private int newPart(boolean tether) {
        int number = draft.parts.size();
        boolean shared = !draft.sided || draft.chance(0.18);
        draft.parts.add(new PartDraft((tether ? "hose-" : "part-") + number, shared, tether));
        return number;
    }

    private void attach(int part) {
        JointDraft joint = newJoint(part, parent(part));
        if (draft.chance(0.15)) {
            third(joint);
        }
    }

    /** A tether ties two or three rigid parts that need not be near. */
    private void lay(int tether) {
        int ends = draft.chance(0.3) ? 3 : draft.chance(0.85) ? 2 : 1;
        List<Integer> tied = new ArrayList<>();
        for (int i = 0; i < ends; i++) {
            int end = i == 0 && draft.chance(0.5) ? Draft.BODY : rigid(tether);
            if (!tied.contains(end)) {
                tied.add(end);
                newJoint(tether, end);
            }
        }
    }

    /** One more joint between parts that are there already. */
    private void cross() {
        int part = first + draft.random.nextInt(draft.parts.size() - first);
        int other = draft.chance(0.15)
                ? Draft.BODY
                : Math.max(first, part - 1 - draft.random.nextInt(draft.chance(0.8) ? 3 : draft.parts.size()));
        if (part != other) {
            JointDraft joint = newJoint(part, other);
            if (draft.chance(0.15)) {
                third(joint);
            }
            if (draft.sided && !draft.once(joint) && draft.chance(0.06)) {
                joint.where = draft.chance(0.5) ? Where.LEFT : Where.RIGHT;
            }
        }
    }

    private JointDraft newJoint(int part, int other) {
        JointDraft joint = new JointDraft("joint-" + draft.joints.size());
        joint.joins.add(part);
        joint.joins.add(other);
        draft.joints.add(joint);
        return joint;
    }

    private void third(JointDraft joint) {
        int more = near(joint.joins.get(0));
        if (!joint.joins.contains(more)) {
            joint.joins.add(more);
        }
    }

    private int parent(int part) {
        double kind = draft.random.nextDouble();
        if (part == first || kind < 0.22) {
            return Draft.BODY;
        }
        return kind < 0.75 ? rigidBefore(part) : rigid(part);
    }

    private int rigidBefore(int part) {
        int before = part - 1;
        while (draft.parts.get(before).tether) {
            before--;
        }
        return before < first ? Draft.BODY : before;
    }

    /** Any rigid part but this one. */
    private int rigid(int but) {
        List<Integer> rigid = new ArrayList<>();
        for (int i = 0; i < draft.parts.size(); i++) {
            if (i != but && (i == Draft.BODY || i >= first) && !draft.parts.get(i).tether) {
                rigid.add(i);
            }
        }
        return draft.any(rigid);
    }

    private int near(int part) {
        int away = 1 + draft.random.nextInt(3);
        int near = Math.min(draft.parts.size() - 1, draft.chance(0.5) ? part - away : part + away);
        return near < first ? Draft.BODY : near;
    }
}
