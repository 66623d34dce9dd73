/** A fastener that will not move: what to try, in which order, what not to try here, and when to stop. */
@NullMarked
package putback.labour.seized;

import org.jspecify.annotations.NullMarked;
