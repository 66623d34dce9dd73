/** In which order to open them, for the least set-up. */
@NullMarked
package putback.plan.order;

import org.jspecify.annotations.NullMarked;
