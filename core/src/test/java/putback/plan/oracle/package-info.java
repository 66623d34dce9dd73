/** Checks of the planner that are written from the design alone and share none of its code. */
@NullMarked
package putback.plan.oracle;

import org.jspecify.annotations.NullMarked;
