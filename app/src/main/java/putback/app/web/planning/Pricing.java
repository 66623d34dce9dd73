package putback.app.web.planning;

import putback.app.text.ExamplePrices;
import putback.plan.Plan;

/** What the parts of a plan cost a garage. */
public interface Pricing {
    /** Where no garage's prices are known, every price is an example and says so. */
    Pricing EXAMPLES = (plan, job) -> ExamplePrices.marked(plan);

    /**
     * The plan with the prices that hold.
     *
     * @param job id of the one that it is for; empty for none
     */
    Plan priced(Plan plan, String job);
}
