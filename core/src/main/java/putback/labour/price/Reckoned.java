package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import putback.labour.time.JobTime;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.quantity.Minutes;
import putback.quantity.Parsed;

/** A plan with its time as a distribution and what may be stuck in it. */
record Reckoned(Plan plan, List<Stuck> stuck, JobTime time) {
    private static final double LIKELY = 0.5;

    /** Or what cannot be reckoned with. */
    static Parsed<Reckoned> of(Plan plan, Beliefs beliefs, Terms terms) {
        Parsed<List<Stuck>> stuck = StuckJoints.of(plan, beliefs, terms.ratePerHour());
        if (!(stuck instanceof Parsed.Value<List<Stuck>> seized)) {
            return new Parsed.Refused<>(stuck.refusal());
        }
        Parsed<JobTime> time = PlanTime.of(plan, beliefs.own(), seized.value());
        return time instanceof Parsed.Value<JobTime> sound
                ? new Parsed.Value<>(new Reckoned(plan, seized.value(), sound.value()))
                : new Parsed.Refused<>(time.refusal());
    }

    /** Whole minutes that are as often too many as too few. */
    long likelyMinutes() {
        return Math.round(time.quantile(LIKELY));
    }

    /** Needed parts with a price, in the order of the invoice. */
    List<PartNeed> priced() {
        List<PartNeed> priced = new ArrayList<>();
        for (PartNeed need : plan.parts()) {
            if (need.price() != null) {
                priced.add(need);
            }
        }
        return priced;
    }

    /** Needed parts without one. */
    List<PartNeed> unpriced() {
        List<PartNeed> unpriced = new ArrayList<>(plan.parts());
        unpriced.removeAll(priced());
        return unpriced;
    }

    /**
     * @param minutes whole ones of labour
     * @param weights how the jobs share them
     */
    Invoice invoice(long minutes, List<Job> jobs, List<Minutes> weights, Terms terms) {
        List<Long> split = WholeSplit.byMinutes(minutes, weights);
        List<Invoice.Labour> labour = new ArrayList<>();
        for (int i = 0; i < jobs.size(); i++) {
            labour.add(new Invoice.Labour("Labour: " + jobs.get(i).name(), split.get(i)));
        }
        List<Invoice.Bought> bought = new ArrayList<>();
        for (PartNeed need : plan.parts()) {
            BigDecimal price = need.price();
            if (price != null) {
                bought.add(new Invoice.Bought(need.name(), need.count(), price));
            }
        }
        return Invoice.of(labour, bought, terms);
    }
}
