package putback.store.books;

import putback.ledger.chain.Verdict;

/** A job whose chain of events is not whole. */
public record BrokenChain(String job, Verdict.Broken fault) {}
