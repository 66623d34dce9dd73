package putback.plan.steps;

import java.util.BitSet;
import putback.plan.access.Ties;

/** How far the car is apart. */
final class ApartScene {
    private final Job job;
    final BitSet open = new BitSet();
    final BitSet loosened = new BitSet();
    final BitSet movedAside = new BitSet();
    final Lowerings lowerings = new Lowerings();

    /** Hanging parts of which a step has said what carries them. */
    final BitSet carried = new BitSet();

    private Ties ties;

    ApartScene(Job job) {
        this.job = job;
        this.ties = job.ties(open);
    }

    /** What hangs together now. */
    Ties ties() {
        return ties;
    }

    /** What will hang together once this joint is open too. */
    Ties tiesWithout(int joint) {
        BitSet opened = (BitSet) open.clone();
        opened.set(joint);
        return job.ties(opened);
    }

    void open(int joint) {
        open.set(joint);
        ties = job.ties(open);
    }

    boolean wheelIsOff() {
        return job.wheelIsOff(ties);
    }

    /** What hangs in one piece with the part, and the part. */
    BitSet hangingWith(int part) {
        BitSet group = new BitSet();
        for (int other = 1; other < job.network.parts(); other++) {
            group.set(other, other == part || ties.hung(other) && ties.heldTogether(part, other));
        }
        return group;
    }
}
