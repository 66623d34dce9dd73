/** What else could be renewed while a car is apart, and what that adds to the job. */
@NullMarked
package putback.labour.alongside;

import org.jspecify.annotations.NullMarked;
