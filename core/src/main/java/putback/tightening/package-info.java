/**
 * How tight: threads, strength of bolts, torque against clamp load, whether a stated torque can be right, what to set a
 * wrench to and what it may read. Lengths in mm, areas in mm2, forces in N, stresses in MPa, torques in N·m inside the
 * room unless the name says otherwise.
 */
@NullMarked
package putback.tightening;

import org.jspecify.annotations.NullMarked;
