/** Small dense linear algebra for the rooms of wheel angles. */
@NullMarked
package putback.angles.numbers;

import org.jspecify.annotations.NullMarked;
