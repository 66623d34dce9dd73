package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.order.Move;
import putback.sheet.Joint;
import putback.sheet.StoredEnergy;

/**
 * Joints between old parts that are scrapped in one piece. The new parts are joined anew, but the old ones need not be
 * parted: all of them are renewed, they are on the bench by then, and nothing else is opened because of it. On the car the
 * plan opens such a joint all the same, see docs/decisions/0005, and says that it need not be.
 */
final class Scrapped {
    private final BitSet joints;

    private final BitSet onCar;

    private Scrapped(BitSet joints, BitSet onCar) {
        this.joints = joints;
        this.onCar = onCar;
    }

    static Scrapped of(Job job) {
        List<Integer> order = new ArrayList<>();
        for (Move move : job.moves) {
            if (move instanceof Move.Open one) {
                order.add(one.joint());
            }
        }
        BitSet onBench = new BitSet();
        BitSet all = new BitSet();
        for (int joint : order) {
            addIfSound(job, order, joint, true, onBench);
        }
        all.or(onBench);
        for (int joint : order) {
            addIfSound(job, order, joint, false, all);
        }
        all.andNot(onBench);
        return new Scrapped(onBench, all);
    }

    private static void addIfSound(Job job, List<Integer> order, int joint, boolean bench, BitSet shut) {
        if (job.network.isBench(joint) == bench && !shut.get(joint) && mayStay(job, job.joint(joint))) {
            shut.set(joint);
            shut.set(joint, isSound(job, order, shut));
        }
    }

    /** Whether it is opened on the car though the old parts could come off in one piece. */
    boolean couldStay(Joint joint) {
        return onCar.get(joint.index());
    }

    boolean staysTogether(Joint joint) {
        return joints.get(joint.index());
    }

    private static boolean mayStay(Job job, Joint joint) {
        boolean stays = !job.network.isBench(joint.index()) || joint.letsGo().isEmpty();
        for (int part : joint.joins()) {
            boolean spring = job.part(part).entry().storedEnergy() == StoredEnergy.SPRING;
            stays &= job.renewal.renews(part) && !spring;
        }
        return stays;
    }

    /** Whether all others can still be opened in their order while these stay shut. */
    private static boolean isSound(Job job, List<Integer> order, BitSet shut) {
        BitSet asides = new BitSet();
        for (int part : job.selection.aside()) {
            asides.set(part);
        }
        BitSet open = new BitSet();
        for (int joint : order) {
            if (!shut.get(joint)) {
                if (!job.reach.canOpen(joint, open, asides)) {
                    return false;
                }
                open.set(joint);
            }
        }
        return true;
    }
}
