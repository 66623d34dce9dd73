/** Work that several jobs on one car have in common, and what each of them bears of it. */
@NullMarked
package putback.labour.share;

import org.jspecify.annotations.NullMarked;
