package putback.plan.selection;

import java.util.BitSet;

/**
 * A sound choice of joints to open and parts to move aside.
 *
 * @param work minutes in millionths
 * @param rank orders choices by work, then by the number of joints: work times {@link LeastWork#SCALE} plus that number
 */
public record Choice(BitSet joints, BitSet asides, long work, long rank) {}
