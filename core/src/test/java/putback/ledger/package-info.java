@NullMarked
package putback.ledger;

import org.jspecify.annotations.NullMarked;
