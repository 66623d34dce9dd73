package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.seized.RustGrade;
import putback.labour.share.Shares;
import putback.labour.time.JobTime;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.quantity.Minutes;
import putback.quantity.Parsed;

/** Works out what a plan costs. */
public final class Estimating {
    private static final double LIKELY = 0.5;
    private static final double FOUR_IN_FIVE = 0.8;
    private static final double STOP = 0.95;

    private final Plan plan;
    private final List<Job> jobs;
    private final Terms terms;
    private final List<Stuck> stuck;
    private final JobTime time;
    private final @Nullable Shares shares;

    private Estimating(
            Plan plan, List<Job> jobs, Terms terms, List<Stuck> stuck, JobTime time, @Nullable Shares shares) {
        this.plan = plan;
        this.jobs = jobs;
        this.terms = terms;
        this.stuck = stuck;
        this.time = time;
        this.shares = shares;
    }

    /**
     * The estimate, or why there is none.
     *
     * @param plan of all jobs together
     * @param jobs one or more
     * @param seed for sampling, where there is any
     */
    public static Parsed<Estimate> of(Plan plan, List<Job> jobs, RustGrade grade, Terms terms, long seed) {
        if (!(terms.checked() instanceof Parsed.Value<Terms>)) {
            return new Parsed.Refused<>(terms.checked().refusal());
        }
        Parsed<List<Stuck>> stuck = StuckJoints.of(plan, grade, terms.ratePerHour());
        if (!(stuck instanceof Parsed.Value<List<Stuck>> seized)) {
            return new Parsed.Refused<>(stuck.refusal());
        }
        Parsed<JobTime> time = PlanTime.of(plan, seized.value());
        if (!(time instanceof Parsed.Value<JobTime> reckoned)) {
            return new Parsed.Refused<>(time.refusal());
        }
        Shares shares = null;
        if (jobs.size() > 1) {
            Parsed<Shares> shared = CommonWork.shares(plan.assembly(), jobs, seed);
            if (!(shared instanceof Parsed.Value<Shares> fair)) {
                return new Parsed.Refused<>(shared.refusal());
            }
            shares = fair.value();
        }
        return new Parsed.Value<>(
                new Estimating(plan, jobs, terms, seized.value(), reckoned.value(), shares).estimate());
    }

    private Estimate estimate() {
        Figure likely = figure(LIKELY);
        Invoice invoice = invoice(likely.minutes());
        BigDecimal ceiling = terms.ceiling();
        Double over = null;
        Long within = null;
        if (ceiling != null) {
            double minutes = Ceiling.minutes(ceiling, invoice.sum(Line.Kind.PARTS), terms);
            over = minutes <= 0 ? 1 : time.chanceAbove(minutes);
            within = (long) Math.floor(minutes);
        }
        return new Estimate(
                jobs,
                time,
                likely,
                figure(FOUR_IN_FIVE),
                figure(STOP),
                PlanTime.risk(time),
                Soak.of(stuck, commonMean()),
                Shelf.of(stuck, terms.ratePerHour()),
                shares,
                invoice,
                over,
                within,
                damage(),
                beatsAll(),
                Notes.of(plan, jobs, terms, shares, within));
    }

    private Figure figure(double chance) {
        long minutes = Math.round(time.quantile(chance));
        return new Figure(chance, minutes, invoice(minutes).total());
    }

    private Invoice invoice(long minutes) {
        List<Minutes> weights = shares == null ? List.of(plan.total()) : shares.minutes();
        List<Long> split = WholeMinutes.split(minutes, weights);
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

    private double commonMean() {
        double common = plan.assembly().sheet().times().common();
        return Math.exp(common * common / 2);
    }

    private double damage() {
        double damage = 0;
        for (Stuck one : stuck) {
            damage += one.damage();
        }
        return damage;
    }

    private double beatsAll() {
        double none = 1;
        for (Stuck one : stuck) {
            none *= 1 - one.beatsAll();
        }
        return 1 - none;
    }
}
