package putback.plan;

import putback.quantity.Minutes;

/**
 * What is known about the objective of a plan.
 *
 * @param proven whether no plan has a lower objective
 * @param bound no plan has a lower objective than this
 */
public record Proof(boolean proven, Minutes bound) {}
