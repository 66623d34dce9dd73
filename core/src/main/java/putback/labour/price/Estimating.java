package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.share.Shares;
import putback.plan.Plan;
import putback.quantity.Minutes;
import putback.quantity.Parsed;

/** Works out what a plan costs. */
public final class Estimating {
    private static final double LIKELY = 0.5;
    private static final double FOUR_IN_FIVE = 0.8;
    private static final double STOP = 0.95;

    private final Reckoned all;
    private final List<Job> jobs;
    private final Beliefs beliefs;
    private final Terms terms;
    private final @Nullable Shares shares;

    private Estimating(Reckoned all, List<Job> jobs, Beliefs beliefs, Terms terms, @Nullable Shares shares) {
        this.all = all;
        this.jobs = jobs;
        this.beliefs = beliefs;
        this.terms = terms;
        this.shares = shares;
    }

    /**
     * The estimate, or why there is none.
     *
     * @param plan of all jobs together
     * @param jobs one or more, none twice
     * @param seed for sampling, where there is any
     */
    public static Parsed<Estimate> of(Plan plan, List<Job> jobs, Beliefs beliefs, Terms terms, long seed) {
        if (!(terms.checked() instanceof Parsed.Value<Terms>)) {
            return new Parsed.Refused<>(terms.checked().refusal());
        }
        Parsed<Reckoned> reckoned = Reckoned.of(plan, beliefs, terms);
        if (!(reckoned instanceof Parsed.Value<Reckoned> all)) {
            return new Parsed.Refused<>(reckoned.refusal());
        }
        if (jobs.size() == 1) {
            return new Parsed.Value<>(new Estimating(all.value(), jobs, beliefs, terms, null).estimate(null));
        }
        Parsed<Shares> shared = CommonWork.shares(plan.assembly(), jobs, seed);
        if (!(shared instanceof Parsed.Value<Shares> fair)) {
            return new Parsed.Refused<>(shared.refusal());
        }
        Estimating several = new Estimating(all.value(), jobs, beliefs, terms, fair.value());
        Invoice together = several.invoice(all.value().likelyMinutes());
        Parsed<Amounts> amounts = JobAmounts.of(all.value(), together, jobs, beliefs, terms);
        return amounts instanceof Parsed.Value<Amounts> split
                ? new Parsed.Value<>(several.estimate(split.value()))
                : new Parsed.Refused<>(amounts.refusal());
    }

    private Estimate estimate(@Nullable Amounts amounts) {
        Figure likely = figure(LIKELY);
        Invoice invoice = invoice(likely.minutes());
        BigDecimal ceiling = terms.ceiling();
        Double over = null;
        Long within = null;
        double minutes = 0;
        if (ceiling != null) {
            minutes = Ceiling.minutes(ceiling, invoice.sum(Line.Kind.PARTS), terms);
            over = minutes <= 0 ? 1 : all.time().chanceAbove(minutes);
            within = (long) Math.floor(minutes);
        }
        List<String> notes = new ArrayList<>(Notes.of(all, jobs, terms, shares, within));
        if (amounts != null) {
            notes.addAll(Notes.aboveAlone(jobs, amounts));
        }
        return new Estimate(
                jobs,
                all.time(),
                likely,
                figure(FOUR_IN_FIVE),
                Stop.of(figure(STOP), ceiling, minutes, this::at),
                PlanTime.risk(all.time()),
                Soak.of(all.stuck(), commonMean()),
                Shelf.of(all.stuck(), terms.ratePerHour()),
                shares,
                amounts,
                invoice,
                all.unpriced(),
                over,
                within,
                damage(),
                beatsAll(),
                Evidence.of(all.plan(), beliefs, all.stuck()),
                notes);
    }

    private Figure figure(double chance) {
        long minutes = Math.round(all.time().quantile(chance));
        return new Figure(chance, minutes, invoice(minutes).total());
    }

    private Figure at(long minutes) {
        return new Figure(
                1 - all.time().chanceAbove((double) minutes),
                minutes,
                invoice(minutes).total());
    }

    private Invoice invoice(long minutes) {
        List<Minutes> weights = shares == null ? List.of(all.plan().total()) : shares.minutes();
        return all.invoice(minutes, jobs, weights, terms);
    }

    private double commonMean() {
        double common = all.plan().assembly().sheet().times().common();
        return Math.exp(common * common / 2);
    }

    private double damage() {
        double damage = 0;
        for (Stuck one : all.stuck()) {
            damage += one.damage();
        }
        return damage;
    }

    private double beatsAll() {
        double none = 1;
        for (Stuck one : all.stuck()) {
            none *= 1 - one.beatsAll();
        }
        return 1 - none;
    }
}
