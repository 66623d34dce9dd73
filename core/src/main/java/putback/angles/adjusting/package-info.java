/** What to turn on all adjusters together, so that everything wanted is inside its range and the steering wheel straight. */
@NullMarked
package putback.angles.adjusting;

import org.jspecify.annotations.NullMarked;
