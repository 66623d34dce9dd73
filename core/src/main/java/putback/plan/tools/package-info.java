/** A plan's tools and tightenings held against the garage's toolbox. */
@NullMarked
package putback.plan.tools;

import org.jspecify.annotations.NullMarked;
