/** The damping of one corner from a recorded bounce. */
@NullMarked
package putback.angles.bounce;

import org.jspecify.annotations.NullMarked;
