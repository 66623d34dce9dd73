package putback.plan.oracle;

import java.util.BitSet;
import java.util.List;
import putback.plan.order.Move;

/** The moves of the way apart: each sound, none in vain, and what their set-up costs. */
final class MoveCheck extends Check {
    private final Rules rules = scene.rules;
    private final BitSet joints = new BitSet();
    private final BitSet asides = new BitSet();

    MoveCheck(Scene scene) {
        super(scene);
        scene.plan.selection().open().forEach(joints::set);
        scene.plan.selection().aside().forEach(asides::set);
    }

    @Override
    void end() {
        SelectionCheck.complaints(scene.assembly(), scene.plan.wanted(), scene.plan.selection())
                .forEach(sentence -> complain(true, sentence));
        List<Move> moves = scene.plan.moves();
        List<Integer> order = moves.stream()
                .filter(Move.Open.class::isInstance)
                .map(move -> ((Move.Open) move).joint())
                .toList();
        complain(
                !order.stream().sorted().toList().equals(joints.stream().boxed().toList()),
                "the moves do not open each joint once");
        checkOrder(moves);
        long setup = new Settings(rules.assembly()).sequence(order);
        complain(scene.plan.sequenceSetup().millionths() != setup, "the set-up of the way apart is not " + setup);
        boolean beaten = scene.plan.proof().bound().compareTo(scene.plan.objective()) > 0;
        complain(beaten, "the bound is above the objective");
        boolean equal = scene.plan.proof().bound().equals(scene.plan.objective());
        complain(scene.plan.proof().proven() && !equal, "a proven objective is not its own bound");
        asides.stream()
                .forEach(part -> complain(orderIsSoundWithout(part, moves), "nobody needs aside " + partId(part)));
    }

    private void checkOrder(List<Move> moves) {
        BitSet open = new BitSet();
        BitSet aside = new BitSet();
        for (Move move : moves) {
            if (move instanceof Move.MoveAside moved) {
                complain(aside.get(moved.part()), partId(moved.part()) + " is moved aside twice");
                complain(!asides.get(moved.part()), partId(moved.part()) + " is moved aside and not listed");
                complain(!rules.canGoAside(moved.part(), open), partId(moved.part()) + " is moved aside too early");
                aside.set(moved.part());
            } else if (move instanceof Move.Open opened) {
                int j = opened.joint();
                complain(!rules.accessible(j, open, rules.bonds(open), aside), jointId(j) + " is opened out of reach");
                complain(!rules.firstOnesOpen(j, joints, open), jointId(j) + " is opened ahead of what goes first");
                open.set(j);
            }
        }
        complain(!aside.equals(asides), "the asides moved are not those listed");
    }

    /** Reading: an aside is used only if the order would not be sound without it. */
    private boolean orderIsSoundWithout(int part, List<Move> moves) {
        BitSet open = new BitSet();
        BitSet aside = new BitSet();
        for (Move move : moves) {
            if (move instanceof Move.MoveAside moved) {
                aside.set(moved.part(), moved.part() != part);
            } else if (move instanceof Move.Open opened) {
                if (!rules.accessible(opened.joint(), open, rules.bonds(open), aside)) {
                    return false;
                }
                open.set(opened.joint());
            }
        }
        return true;
    }
}
