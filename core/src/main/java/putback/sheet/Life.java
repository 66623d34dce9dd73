package putback.sheet;

/**
 * Weibull life of a part.
 *
 * @param medianKilometres above 0
 * @param shape above 0
 */
public record Life(double medianKilometres, double shape) {}
