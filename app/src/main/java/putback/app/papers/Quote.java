package putback.app.papers;

import org.jspecify.annotations.Nullable;
import putback.labour.price.Estimate;
import putback.labour.price.Terms;
import putback.labour.time.DrawnTimes;
import putback.plan.Plan;

/**
 * An estimate with what it was made from.
 *
 * @param standing how long the car stands with several hands; null for one pair
 * @param rust grade, 0 to 4
 */
public record Quote(Plan plan, Estimate estimate, @Nullable DrawnTimes standing, Terms terms, int rust) {}
