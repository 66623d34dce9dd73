package putback.plan.steps;

import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Numbers;
import putback.plan.access.Ties;
import putback.plan.order.Move;
import putback.sheet.Joint;
import putback.sheet.Letting;
import putback.sheet.Part;
import putback.sheet.SeatedSpring;

/** Puts aids on what a joint lets go before it is opened, and lets down on its jack what may come down. */
final class Securing {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final ApartScene scene;
    private final Cautions cautions;
    private final BareSprings springs;
    private final Pivots pivots;
    /** What flopped with the joint before open, and was seen to then. */
    private List<BitSet> flopped = List.of();

    Securing(Job job, StepLog log, AidsOn aids, ApartScene scene, Cautions cautions, BareSprings springs) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.scene = scene;
        this.cautions = cautions;
        this.springs = springs;
        this.pivots = new Pivots(job.network);
    }

    /**
     * @param asideNext parts that get an aid of their own before the next joint is opened
     */
    void before(Joint joint, BitSet asideNext) {
        for (Letting letting : joint.letsGo()) {
            support(joint, letting);
        }
        supportWhatFlops(joint, asideNext);
    }

    private void support(Joint joint, Letting letting) {
        AidsOn.On same = aids.find(letting.part(), letting.aid());
        AidsOn.On there = same != null ? same : tiedAlready(joint, letting);
        if (there != null) {
            there.askers.set(joint.index());
            return;
        }
        if (Job.isSpared(letting.aid()) && scene.ties().off(letting.part())) {
            return;
        }
        Part part = job.part(letting.part());
        putOn(part, letting.aid(), AidText.on(part, letting.aid(), joint), List.of())
                .askers
                .set(joint.index());
    }

    private AidsOn.On putOn(Part part, String aid, String text, List<String> lines) {
        log.add(Draft.with(Act.SUPPORT, part, text)
                .aid(aid)
                .caution(lines)
                .caution(cautions.support(part, aid, scene.open)));
        return aids.putOn(part, aid);
    }

    /**
     * A strap or jack that holds the part, or the hanging group to which it belongs before and after the joint is opened;
     * a strap does not do for a jack.
     */
    private AidsOn.@Nullable On tiedAlready(Joint joint, Letting letting) {
        if (!Job.isSpared(letting.aid())) {
            return null;
        }
        BitSet held = new BitSet();
        held.set(letting.part());
        if (scene.ties().hung(letting.part())) {
            Ties after = scene.tiesWithout(joint.index());
            for (int other : Numbers.in(scene.hangingWith(letting.part()))) {
                if (after.heldTogether(other, letting.part())) {
                    held.set(other);
                }
            }
        }
        AidsOn.On there = aids.holding(held);
        return there != null && Job.isJack(letting.aid()) && !Job.isJack(there.name) ? null : there;
    }

    /**
     * What this joint leaves on its pivots. A small end there is no weight, where the sheet names what else the joint lets
     * go.
     */
    private void supportWhatFlops(Joint joint, BitSet asideNext) {
        BitSet after = (BitSet) scene.open.clone();
        after.set(joint.index());
        List<BitSet> before = flopped;
        flopped = pivots.flopping(after);
        for (BitSet group : flopped) {
            boolean small = !joint.letsGo().isEmpty() && pivots.isLooseEnd(group, after);
            if (before.contains(group) || small || aids.holding(group) != null || group.intersects(asideNext)) {
                continue;
            }
            Part part = job.part(flops(joint, group));
            String text = "Tie up " + Words.the(part) + " with a strap before opening " + Words.of(joint) + ".";
            putOn(part, AidText.STRAP, text, List.of("The sheet names no aid here: left on its pivots it flops over."))
                    .askers
                    .set(joint.index());
            log.warn("With " + Words.of(joint) + " open, " + Words.the(part)
                    + " is held by pivots only, and the sheet names no aid for it: a strap was put in.");
        }
    }

    /** The part of the group that the joint joins, if one is. */
    private static int flops(Joint joint, BitSet group) {
        for (int part : joint.joins()) {
            if (group.get(part)) {
                return part;
            }
        }
        return group.nextSetBit(0);
    }

    /**
     * Only once the last joint that holds it up is open: what is still bolted would carry the part and the spring. A spring
     * that comes out before that joint has to be let go first.
     *
     * @param before what hung together before the joint was opened
     */
    void after(Joint joint, Ties before) {
        for (Letting letting : joint.letsGo()) {
            letDown(letting, before);
        }
    }

    private void letDown(Letting letting, Ties before) {
        int index = letting.part();
        AidsOn.On jack = aids.find(index, letting.aid());
        boolean due = letting.letDown() && scene.lowerings.mayGoFurther(index);
        if (!due || jack == null || before.off(index) || springs.stayIn(index)) {
            return;
        }
        Next next = next(letting);
        if (next != Next.ASKED_AGAIN) {
            Part part = job.part(index);
            log.add(Draft.with(
                            Act.LET_DOWN, part, "Let " + Words.the(part) + " down slowly on its " + letting.aid() + ".")
                    .aid(letting.aid())
                    .caution(springs.goingDown(index))
                    .caution(cautions.tethers(List.of(part), scene.open)));
            scene.lowerings.add(index, jack.askers, next == Next.SPRING);
        }
    }

    /** What comes first of the joints that are still to be opened and have to do with the part. */
    private enum Next {
        NOTHING,
        ASKED_AGAIN,
        SPRING
    }

    private Next next(Letting letting) {
        boolean spring = false;
        for (Move move : job.moves) {
            if (move instanceof Move.Open one && !scene.open.get(one.joint())) {
                if (job.joint(one.joint()).letsGo().contains(letting)) {
                    return spring ? Next.SPRING : Next.ASKED_AGAIN;
                }
                spring |= isSeatOfSpringOn(letting.part(), one.joint());
            }
        }
        return Next.NOTHING;
    }

    private boolean isSeatOfSpringOn(int part, int joint) {
        for (SeatedSpring spring : job.springs) {
            if (spring.seats().contains(joint) && springs.standsOn(spring, part)) {
                return true;
            }
        }
        return false;
    }
}
