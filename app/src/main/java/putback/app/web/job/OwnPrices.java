package putback.app.web.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import putback.app.text.ExamplePrices;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.store.books.PartLine;
import putback.store.books.PartPrice;
import putback.store.books.PartPrices;

/**
 * What the parts of a job cost this garage: the job's own price, else what was paid for the model before, else the example
 * of the sheet, which says that it is one.
 */
final class OwnPrices {
    /** Behind the name of whatever rests on a price that is nobody's. */
    static final String EXAMPLE = ExamplePrices.MARK;

    private final List<PartLine> lines;
    private final Map<String, PartPrice> paid = new TreeMap<>();

    OwnPrices(List<PartLine> lines, List<PartPrice> prices) {
        this.lines = lines;
        for (PartPrice price : prices) {
            paid.put(price.part(), price);
        }
    }

    /** All that the plan needs and that the garage put down by itself, each with the price that holds. */
    List<PartNeed> needs(Plan plan) {
        List<PartNeed> needs = new ArrayList<>();
        for (PartNeed need : plan.parts()) {
            needs.add(priced(need));
        }
        for (PartLine line : lines) {
            if (line.isOwn()) {
                needs.add(new PartNeed("own " + line.id(), line.name(), line.count(), line.cost(), "put down here"));
            }
        }
        return needs;
    }

    private PartNeed priced(PartNeed need) {
        String each = each(need);
        if (!each.isEmpty()) {
            BigDecimal cost = new BigDecimal(each).multiply(BigDecimal.valueOf(need.count()));
            return new PartNeed(need.id(), need.name(), need.count(), cost, need.reason());
        }
        return ExamplePrices.marked(need);
    }

    /** What one costs this garage; empty where nobody has said. */
    String each(PartNeed need) {
        PartLine line = line(need);
        if (line != null && !line.pricedBy().isEmpty()) {
            return line.price();
        }
        PartPrice before = before(need);
        return before == null ? "" : before.price();
    }

    /** What was paid for it the last time; null where it never was. */
    @Nullable
    PartPrice before(PartNeed need) {
        return paid.get(PartPrices.part(need.id(), need.name()));
    }

    /** Where it is on its way; null as long as nobody has put it down. */
    @Nullable
    PartLine line(PartNeed need) {
        for (PartLine line : lines) {
            if (line.part().equals(need.id())) {
                return line;
            }
        }
        return null;
    }

    /** Fluids and the like that went into this model before, and that this job has not yet. */
    List<PartPrice> offered() {
        List<PartPrice> offered = new ArrayList<>();
        for (PartPrice price : paid.values()) {
            boolean here = lines.stream()
                    .anyMatch(
                            line -> line.isOwn() && PartPrices.own(line.name()).equals(price.part()));
            if (price.own() && !here) {
                offered.add(price);
            }
        }
        return offered;
    }
}
