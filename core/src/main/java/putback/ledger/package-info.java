/** What was done to a car, event by event, and what the job still owes. */
@NullMarked
package putback.ledger;

import org.jspecify.annotations.NullMarked;
