@NullMarked
package putback.ledger.chain;

import org.jspecify.annotations.NullMarked;
