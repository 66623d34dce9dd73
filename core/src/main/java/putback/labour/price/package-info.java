/** What a planned job costs, line by line, and how sure that is. */
@NullMarked
package putback.labour.price;

import org.jspecify.annotations.NullMarked;
