/**
 * What a job costs in time and money, and how sure that is: {@code seized} puts the ways of undoing what will not move in
 * order, {@code time} adds up steps that scatter, {@code share} splits common work between jobs, {@code learnt} turns what
 * a garage has seen into its own figures, {@code alongside} says what else is cheap to renew, {@code price} puts it all on an
 * estimate. Times are in minutes, money in the garage's currency.
 */
@NullMarked
package putback.labour;

import org.jspecify.annotations.NullMarked;
