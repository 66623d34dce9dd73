package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.order.Move;
import putback.plan.selection.Selected;
import putback.plan.selection.Selection;
import putback.plan.selection.Selector;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;

/** A round trip with what it was built from, and how to look things up in it. */
public record Travelled(Assembly assembly, Wanted wanted, Selection selection, List<Move> moves, RoundTrip trip) {
    /** The selection of least work, opened first come first served. */
    public static Travelled of(Assembly assembly, String... names) {
        Wanted wanted = ASheet.wanted(assembly, names);
        Selected selected = Selector.least(assembly, wanted);
        if (!(selected instanceof Selected.Sound sound)) {
            throw new IllegalArgumentException(selected.toString());
        }
        Selection selection = sound.selection();
        List<Move> moves = order(assembly, selection, null);
        return new Travelled(assembly, wanted, selection, moves, StepBuilder.build(assembly, wanted, selection, moves));
    }

    /** The selection opened in a random sound order. */
    static Travelled of(Assembly assembly, Wanted wanted, Selection selection, Random random) {
        List<Move> moves = order(assembly, selection, random);
        return new Travelled(assembly, wanted, selection, moves, StepBuilder.build(assembly, wanted, selection, moves));
    }

    private static List<Move> order(Assembly assembly, Selection selection, @Nullable Random random) {
        List<Integer> joints = new ArrayList<>(selection.open());
        if (random != null) {
            Collections.shuffle(joints, random);
        }
        Network network = Network.of(assembly);
        Accessibility access = new Accessibility(network);
        BitSet planned = new BitSet();
        selection.open().forEach(planned::set);
        BitSet open = new BitSet();
        BitSet aside = new BitSet();
        List<Move> moves = new ArrayList<>();
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int joint : joints) {
                boolean now = !open.get(joint)
                        && Accessibility.inOrder(network, joint, open, planned)
                        && access.canOpen(joint, open, aside);
                if (now) {
                    open.set(joint);
                    moves.add(new Move.Open(joint));
                    moved = true;
                    break;
                }
            }
            for (int part : selection.aside()) {
                boolean now = !moved
                        && !aside.get(part)
                        && assembly.parts().get(part).asideOpens().stream().allMatch(open::get);
                if (now) {
                    aside.set(part);
                    moves.add(new Move.MoveAside(part));
                    moved = true;
                }
            }
        }
        if (moves.size() != selection.open().size() + selection.aside().size()) {
            throw new IllegalStateException("stuck after " + moves + " of " + selection);
        }
        return moves;
    }

    public List<Step> steps() {
        return trip.steps();
    }

    public Stream<Step> all(Act act) {
        return steps().stream().filter(step -> step.act() == act);
    }

    public Step first(Act act, String id) {
        return steps().stream()
                .filter(step -> step.act() == act && is(step, id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + act.word() + " of " + id + " in\n" + text()));
    }

    /** The number of the first such step. */
    public int at(Act act, String id) {
        return first(act, id).number();
    }

    public int last(Act act, String id) {
        return steps().stream()
                .filter(step -> step.act() == act && is(step, id))
                .mapToInt(Step::number)
                .max()
                .orElseThrow(() -> new AssertionError("no " + act.word() + " of " + id + " in\n" + text()));
    }

    public long count(Act act, String id) {
        return steps().stream()
                .filter(step -> step.act() == act && is(step, id))
                .count();
    }

    public int firstAt(Predicate<Step> wanted) {
        return steps().stream()
                .filter(wanted)
                .mapToInt(Step::number)
                .findFirst()
                .orElse(-1);
    }

    private static boolean is(Step step, String id) {
        boolean joint = step.joint() != null && step.joint().id().equals(id);
        boolean part = step.part() != null && step.part().id().equals(id);
        boolean followUp = step.followUp() != null && step.followUp().id().equals(id);
        return joint || part || followUp;
    }

    /** One line a step, for messages. */
    public String text() {
        StringBuilder lines = new StringBuilder();
        for (Step step : steps()) {
            lines.append(String.format(
                    "%3d %-8s %-11s %-11s %-12s %-6s %s %s%n",
                    step.number(),
                    step.phase(),
                    step.act().word(),
                    step.height().word(),
                    step.station() == null ? "-" : step.station().word(),
                    step.side().word(),
                    step.text(),
                    step.stages()));
            step.cautions()
                    .forEach(caution ->
                            lines.append("        ! ").append(caution).append('\n'));
        }
        trip.warnings()
                .forEach(warning -> lines.append("WARNING ").append(warning).append('\n'));
        return lines.toString();
    }

    public IntStream numbers(Act act) {
        return all(act).mapToInt(Step::number);
    }
}
