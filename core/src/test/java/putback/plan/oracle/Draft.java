package putback.plan.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;
import putback.sheet.Aside;
import putback.sheet.LetsGo;
import putback.sheet.Where;

/** A sheet in the making: which parts there are, which joints join them, and what is in whose way. */
final class Draft {
    static final int BODY = 0;

    final SplittableRandom random;
    final boolean sided;
    final List<PartDraft> parts = new ArrayList<>();
    final List<JointDraft> joints = new ArrayList<>();

    static final class PartDraft {
        final String id;
        final boolean shared;
        final boolean tether;

        @Nullable
        Aside aside;

        boolean spring;

        PartDraft(String id, boolean shared, boolean tether) {
            this.id = id;
            this.shared = shared;
            this.tether = tether;
        }
    }

    static final class JointDraft {
        final String id;
        final List<Integer> joins = new ArrayList<>();
        final List<List<String>> behind = new ArrayList<>();
        final List<String> after = new ArrayList<>();
        final List<String> aheadOf = new ArrayList<>();
        final List<String> spoils = new ArrayList<>();
        final List<LetsGo> letsGo = new ArrayList<>();
        Where where = Where.EACH_SIDE;
        boolean bench;

        JointDraft(String id) {
            this.id = id;
        }
    }

    Draft(SplittableRandom random, boolean sided) {
        this.random = random;
        this.sided = sided;
        parts.add(new PartDraft("body", true, false));
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    /** Minutes with two decimals: mostly about the given figure, sometimes none, sometimes many. */
    Minutes minutes(double about) {
        double kind = random.nextDouble();
        double value = kind < 0.08 ? 0 : kind < 0.18 ? about * 6 : about * 2;
        return new Minutes(Math.round(random.nextDouble() * value * 100) * 10_000);
    }

    /** Whether a joint exists once: everything it joins does. */
    boolean once(JointDraft joint) {
        return !sided || joint.joins.stream().allMatch(part -> parts.get(part).shared);
    }

    /** How many joints the whole car will have. */
    int size() {
        return joints.stream()
                .mapToInt(joint -> once(joint) || joint.where != Where.EACH_SIDE ? 1 : 2)
                .sum();
    }

    List<Integer> jointsOf(int part) {
        List<Integer> found = new ArrayList<>();
        for (int j = 0; j < joints.size(); j++) {
            if (joints.get(j).joins.contains(part)) {
                found.add(j);
            }
        }
        return found;
    }
}
