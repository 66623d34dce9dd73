/** Which joints to open, at the least work, proven. */
@NullMarked
package putback.plan.selection;

import org.jspecify.annotations.NullMarked;
