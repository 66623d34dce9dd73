/** The ledger as a chain: each event sealed to the one before, and batches of several devices put in one order. */
@NullMarked
package putback.ledger.chain;

import org.jspecify.annotations.NullMarked;
