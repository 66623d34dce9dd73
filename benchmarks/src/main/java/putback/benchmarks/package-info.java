/** How long planning takes, beside a general solver on the same sheets. */
@NullMarked
package putback.benchmarks;

import org.jspecify.annotations.NullMarked;
