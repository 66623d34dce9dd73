package putback.plan.steps;

import java.util.BitSet;
import putback.quantity.Minutes;
import putback.sheet.Joint;

/** Shares out minutes so that the steps of a joint or part add up exactly. */
final class Charges {
    private static final int HUNDRED = 100;
    private static final int LOOSEN = 30;
    private static final int START = 30;
    private static final int RUN_DOWN = 30;

    private final Job job;
    private final BitSet paidOut = new BitSet();
    private final BitSet paidBack = new BitSet();
    private final BitSet asidePaidBack = new BitSet();

    Charges(Job job) {
        this.job = job;
    }

    private static Minutes percent(Minutes whole, int percent) {
        return new Minutes(whole.millionths() * percent / HUNDRED);
    }

    static Minutes loosen(Joint joint) {
        return percent(joint.entry().open(), LOOSEN);
    }

    /**
     * @param loosened whether it was broken loose in a step of its own
     */
    static Minutes undo(Joint joint, boolean loosened) {
        Minutes open = joint.entry().open();
        return loosened ? open.minus(loosen(joint)) : open;
    }

    Minutes start(Joint joint) {
        Minutes close = joint.entry().close();
        return job.threaded(joint) ? percent(close, START) : close;
    }

    static Minutes runDown(Joint joint) {
        return percent(joint.entry().close(), RUN_DOWN);
    }

    Minutes tighten(Joint joint) {
        return joint.entry().close().minus(start(joint)).minus(runDown(joint));
    }

    private static Minutes half(Minutes whole) {
        return new Minutes(whole.millionths() / 2);
    }

    private Minutes handling(int part) {
        return job.part(part).entry().handling();
    }

    /** Handling on the way out of those of the parts that end up off, or hung, each once. */
    Minutes out(BitSet parts, BitSet ends) {
        Minutes sum = Minutes.ZERO;
        for (int part = parts.nextSetBit(0); part >= 0; part = parts.nextSetBit(part + 1)) {
            if (ends.get(part) && !paidOut.get(part)) {
                paidOut.set(part);
                sum = sum.plus(half(handling(part)));
            }
        }
        return sum;
    }

    /** The rest of their handling, each once. */
    Minutes back(BitSet parts) {
        Minutes sum = Minutes.ZERO;
        for (int part = parts.nextSetBit(0); part >= 0; part = parts.nextSetBit(part + 1)) {
            if (paidOut.get(part) && !paidBack.get(part)) {
                paidBack.set(part);
                sum = sum.plus(handling(part).minus(half(handling(part))));
            }
        }
        return sum;
    }

    private Minutes aside(int part) {
        return new Minutes(job.network.asideWork(part));
    }

    Minutes asideOut(int part) {
        return half(aside(part));
    }

    Minutes asideBack(int part) {
        if (asidePaidBack.get(part)) {
            return Minutes.ZERO;
        }
        asidePaidBack.set(part);
        return aside(part).minus(half(aside(part)));
    }

    /** What has not been charged to any step. */
    Minutes owed(BitSet moved) {
        BitSet all = new BitSet();
        all.or(job.off);
        all.or(job.hung);
        Minutes sum = out(all, all).plus(back(all));
        for (int part = moved.nextSetBit(0); part >= 0; part = moved.nextSetBit(part + 1)) {
            sum = sum.plus(asideBack(part));
        }
        return sum;
    }
}
