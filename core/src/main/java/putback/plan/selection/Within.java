package putback.plan.selection;

import java.util.BitSet;

/** Choices of a kind: with these joints and asides, and without those. Not changed once made. */
public record Within(BitSet inJoints, BitSet outJoints, BitSet inAsides, BitSet outAsides) {
    public static Within anything() {
        return new Within(new BitSet(), new BitSet(), new BitSet(), new BitSet());
    }

    public Within withJoint(int joint) {
        return new Within(and(inJoints, joint), outJoints, inAsides, outAsides);
    }

    public Within withoutJoint(int joint) {
        return new Within(inJoints, and(outJoints, joint), inAsides, outAsides);
    }

    public Within withAside(int part) {
        return new Within(inJoints, outJoints, and(inAsides, part), outAsides);
    }

    public Within withoutAside(int part) {
        return new Within(inJoints, outJoints, inAsides, and(outAsides, part));
    }

    private static BitSet and(BitSet bits, int one) {
        BitSet larger = (BitSet) bits.clone();
        larger.set(one);
        return larger;
    }
}
