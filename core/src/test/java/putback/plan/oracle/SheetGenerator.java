package putback.plan.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import putback.plan.oracle.Draft.JointDraft;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.sheet.Assembled;
import putback.sheet.Assembly;
import putback.sheet.Part;
import putback.sheet.Unit;
import putback.sheet.UnitEntry;
import putback.sheet.Where;

/** Makes assemblies in which every rule of selection occurs, the same for the same seed. */
public final class SheetGenerator {
    private static final int LARGEST_UNIT = 4;
    private static final int CORNER = 25;

    private SheetGenerator() {}

    /** One assembly with what is to be renewed. */
    public record Instance(long seed, Assembly assembly, Wanted wanted) {
        @Override
        public String toString() {
            return "seed " + seed + ", " + assembly.joints().size() + " joints, renew " + wanted.ids();
        }
    }

    /**
     * @param joints how many joints the whole car has at least; a few more where a tether or a side brings them
     */
    public static Instance make(long seed, int joints, boolean sided) {
        Draft draft = new Draft(new SplittableRandom(seed), sided);
        new Layout(draft).grow(joints);
        return finished(seed, draft);
    }

    /** The same for a car of small corners, few of whose parts are in the way of other corners. */
    public static Instance makeCorners(long seed, int joints) {
        Draft draft = new Draft(new SplittableRandom(seed), true);
        new Layout(draft).growCorners(joints, CORNER);
        return finished(seed, draft);
    }

    private static Instance finished(long seed, Draft draft) {
        new Hindrances(draft).add();
        List<UnitEntry> units = units(draft);
        Assembled assembled = Assembly.of(new Authoring(draft).sheet(seed, units));
        if (assembled instanceof Assembled.Sound sound) {
            return new Instance(seed, sound.assembly(), wanted(draft, sound.assembly()));
        }
        throw new IllegalStateException("seed " + seed + ": " + assembled);
    }

    /** Groups of neighbours that share no part. */
    private static List<UnitEntry> units(Draft draft) {
        List<UnitEntry> units = new ArrayList<>();
        List<Integer> used = new ArrayList<>(List.of(Draft.BODY));
        int most = 1 + draft.parts.size() / 6;
        for (int i = 0; i < most && draft.parts.size() > 3; i++) {
            List<Integer> group = group(draft, used);
            if (group.size() > 1) {
                used.addAll(group);
                List<String> ids =
                        group.stream().map(part -> draft.parts.get(part).id).toList();
                Where where = draft.sided ? Where.EACH_SIDE : Where.ONCE;
                List<String> prepare = draft.chance(0.3) ? List.of("check the top plate") : List.of();
                units.add(new UnitEntry("unit-" + i, where, "Unit " + i, ids, null, false, false, List.of(), prepare));
            }
        }
        return units;
    }

    private static List<Integer> group(Draft draft, List<Integer> used) {
        List<Integer> group = new ArrayList<>();
        group.add(1 + draft.random.nextInt(draft.parts.size() - 1));
        int size = 2 + draft.random.nextInt(LARGEST_UNIT - 1);
        for (int tries = 0; tries < 2 * LARGEST_UNIT && group.size() < size; tries++) {
            int from = draft.any(group);
            List<Integer> joints = draft.jointsOf(from);
            JointDraft joint = draft.joints.get(draft.any(joints));
            int next = draft.any(joint.joins);
            if (!group.contains(next) && draft.parts.get(next).shared == draft.parts.get(from).shared) {
                group.add(next);
            }
        }
        return group.stream().anyMatch(used::contains) ? List.of() : group;
    }

    private static Wanted wanted(Draft draft, Assembly assembly) {
        int count = draft.chance(0.55) ? 1 : draft.chance(0.7) ? 2 : 3;
        List<Target> targets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Target target = target(draft, assembly);
            if (targets.stream().noneMatch(there -> there.id().equals(target.id()))) {
                targets.add(target);
            }
        }
        return new Wanted(targets);
    }

    private static Target target(Draft draft, Assembly assembly) {
        List<Unit> units = assembly.units();
        if (!units.isEmpty() && draft.chance(0.35)) {
            return new Target.OfUnit(draft.any(units));
        }
        List<Part> parts = assembly.parts().subList(1, assembly.parts().size());
        return new Target.OfPart(draft.any(parts));
    }
}
