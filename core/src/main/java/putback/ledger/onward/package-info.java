/** From where the car stands: what comes next, and what may be taken out of turn. */
@NullMarked
package putback.ledger.onward;

import org.jspecify.annotations.NullMarked;
