/** Values with their unit in the type. */
@NullMarked
package putback.quantity;

import org.jspecify.annotations.NullMarked;
