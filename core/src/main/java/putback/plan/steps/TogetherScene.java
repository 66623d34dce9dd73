package putback.plan.steps;

import java.util.BitSet;
import putback.plan.access.Ties;
import putback.sheet.Joint;

/** How far the car is together again. */
final class TogetherScene {
    private final Job job;
    final Lowerings lowerings;
    final BitSet movedAside;
    /** Moved aside and not brought back. */
    final BitSet stillAside;
    /** Not started yet. */
    final BitSet open;
    /** Started, but not able to bear yet: threaded and not run down. */
    final BitSet loose = new BitSet();
    /** Able to lose its aid: tight, or run down where it is tightened under load. */
    final BitSet secured = new BitSet();
    /** Looked at a second time. */
    final BitSet seen = new BitSet();

    TogetherScene(Job job, ApartScene apart) {
        this.job = job;
        this.lowerings = apart.lowerings.copy();
        this.movedAside = (BitSet) apart.movedAside.clone();
        this.stillAside = (BitSet) apart.movedAside.clone();
        this.open = (BitSet) job.opened.clone();
    }

    void start(Joint joint) {
        open.clear(joint.index());
        loose.set(joint.index(), job.threaded(joint));
        secured.set(joint.index(), !job.threaded(joint));
    }

    void runDown(Joint joint) {
        loose.clear(joint.index());
        secured.set(joint.index(), job.tightenedLater(joint));
    }

    void tighten(Joint joint) {
        secured.set(joint.index());
    }

    /** What is tied, if only by fixings that are started. */
    Ties ties() {
        return job.ties(open);
    }

    /** Open, or started and not able to bear. */
    BitSet unsafe() {
        BitSet unsafe = (BitSet) open.clone();
        unsafe.or(loose);
        return unsafe;
    }

    /** What is tied by fixings that can bear. */
    Ties bearing() {
        return job.ties(unsafe());
    }
}
