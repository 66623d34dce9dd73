package putback.labour.price;

import java.util.ArrayList;
import java.util.List;
import putback.plan.PartNeed;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.quantity.Parsed;

/** Prices each of several jobs by itself, and splits the price of all together among them. */
final class JobAmounts {
    private JobAmounts() {}

    /**
     * @param together the invoice of all, labour lines first
     */
    static Parsed<Amounts> of(Reckoned all, Invoice together, List<Job> jobs, Beliefs beliefs, Terms terms) {
        List<Reckoned> each = new ArrayList<>();
        List<Invoice> alone = new ArrayList<>();
        for (Job job : jobs) {
            if (!(Planner.plan(all.plan().assembly(), job.wanted()) instanceof Planned.Sound sound)) {
                return new Parsed.Refused<>("there is no sound order for " + job.name());
            }
            Parsed<Reckoned> one = Reckoned.of(sound.plan(), beliefs, terms);
            if (!(one instanceof Parsed.Value<Reckoned> reckoned)) {
                return new Parsed.Refused<>(one.refusal());
            }
            each.add(reckoned.value());
            alone.add(reckoned.value()
                    .invoice(
                            reckoned.value().likelyMinutes(),
                            List.of(job),
                            List.of(sound.plan().total()),
                            terms));
        }
        List<List<Long>> needs = new ArrayList<>();
        for (PartNeed need : all.priced()) {
            needs.add(needs(need, each));
        }
        return new Parsed.Value<>(Amounts.of(together, needs, alone));
    }

    private static List<Long> needs(PartNeed need, List<Reckoned> each) {
        List<Long> counts = new ArrayList<>();
        for (Reckoned one : each) {
            long count = 0;
            for (PartNeed own : one.priced()) {
                count += own.id().equals(need.id()) || isOfItsAxleSet(own, need) ? own.count() : 0;
            }
            counts.add(count);
        }
        return counts;
    }

    /** One set covers both sides; it stands under the id of the side that came first. */
    private static boolean isOfItsAxleSet(PartNeed own, PartNeed need) {
        return need.name().endsWith(", both sides") && plain(own.id()).equals(plain(need.id()));
    }

    private static String plain(String id) {
        return id.substring(id.indexOf('.') + 1);
    }
}
