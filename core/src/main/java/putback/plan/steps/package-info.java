/** The steps of a round trip, from the wheels on the ground and back to it. */
@NullMarked
package putback.plan.steps;

import org.jspecify.annotations.NullMarked;
