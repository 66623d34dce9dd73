/** How long a job takes, as a distribution: steps that scatter, fasteners that may be seized, a car that is worse than others. */
@NullMarked
package putback.labour.time;

import org.jspecify.annotations.NullMarked;
