/** The garage's tools as data: what is there by size, the torque wrenches with their upkeep, and which wrench fits a tightening best. */
@NullMarked
package putback.tightening.toolbox;

import org.jspecify.annotations.NullMarked;
