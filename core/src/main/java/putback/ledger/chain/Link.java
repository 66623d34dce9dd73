package putback.ledger.chain;

import putback.ledger.Event;

/**
 * One event in its place.
 *
 * @param number from 1, without gaps
 * @param previous hash of the one before; of the first, that of the chain's start
 * @param hash of this one, 64 small hexadecimal digits
 */
public record Link(int number, Event event, String previous, String hash) {}
