package putback.plan.oracle;

import java.util.BitSet;
import java.util.List;
import java.util.OptionalLong;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;

/**
 * What a hurried mechanic does: each blocker is cleared by the way that looks cheapest there and then, taking it off
 * alone or moving it aside. Not a check: it shows how often the cheapest job is not the obvious one.
 */
final class Greedy {
    private final Rules rules;
    private final Duty duty;
    private final BitSet open = new BitSet();
    private final BitSet aside = new BitSet();

    Greedy(Assembly assembly, Wanted wanted) {
        this.rules = new Rules(assembly);
        this.duty = new Duty(rules, wanted);
    }

    /** Work in millionths of a minute; empty when it gets stuck. */
    OptionalLong work() {
        duty.mustOpen.stream().forEach(this::open);
        boolean sound = duty.fulfilled(open) && rules.sound(open, aside);
        return sound ? OptionalLong.of(rules.work(open, aside)) : OptionalLong.empty();
    }

    private void open(int joint) {
        if (open.get(joint)) {
            return;
        }
        open.set(joint);
        rules.joint(joint).after().forEach(this::open);
        for (List<Integer> clause : rules.joint(joint).behind()) {
            clear(clause, joint);
        }
        rules.joint(joint).spoils().stream()
                .filter(part -> !duty.covered.get(part))
                .forEach(part -> rules.jointsOf(part).forEach(this::open));
    }

    private void clear(List<Integer> clause, int joint) {
        Bonds bonds = rules.bonds(open);
        if (clause.stream().anyMatch(part -> rules.clear(part, rules.joint(joint), bonds, aside))) {
            return;
        }
        long cheapest = Long.MAX_VALUE;
        int best = clause.get(0);
        boolean bestAside = false;
        for (int part : clause) {
            long off = openingCost(rules.jointsOf(part)) + rules.handling(part);
            if (off < cheapest) {
                cheapest = off;
                best = part;
                bestAside = false;
            }
            List<Integer> opens = rules.part(part).asideOpens();
            if (rules.part(part).canGoAside() && openingCost(opens) + rules.asideCost(part) < cheapest) {
                cheapest = openingCost(opens) + rules.asideCost(part);
                best = part;
                bestAside = true;
            }
        }
        if (bestAside) {
            aside.set(best);
        }
        (bestAside ? rules.part(best).asideOpens() : rules.jointsOf(best)).forEach(this::open);
    }

    private long openingCost(List<Integer> joints) {
        return joints.stream()
                .filter(j -> !open.get(j))
                .mapToLong(rules::jointCost)
                .sum();
    }
}
