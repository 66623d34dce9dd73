@NullMarked
package putback.ledger.onward;

import org.jspecify.annotations.NullMarked;
