/** The plan: what to open, in what order, and back together, with its reasons. */
@NullMarked
package putback.plan;

import org.jspecify.annotations.NullMarked;
