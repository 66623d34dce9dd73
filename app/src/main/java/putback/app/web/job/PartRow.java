package putback.app.web.job;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.store.books.PartLine;
import putback.store.books.PartPrice;

/**
 * A part of a job on its page: what the plan needs, what is on its way, or both.
 *
 * @param key of its field in the form of prices
 * @param line null as long as nobody has put it down
 * @param each what one costs this garage, empty where nobody has said
 * @param beside what is said beside the price: an example of the sheet, or what was paid the last time
 * @param needed whether the plan, or the garage, still wants it
 */
public record PartRow(
        String key, @Nullable PartLine line, int count, String name, String each, String beside, boolean needed) {

    static List<PartRow> of(JobFile file, @Nullable Plan plan) {
        OwnPrices prices = file.prices();
        List<PartRow> rows = new ArrayList<>();
        List<String> shown = new ArrayList<>();
        if (plan != null) {
            for (PartNeed need : plan.parts()) {
                PartLine line = prices.line(need);
                if (!need.id().startsWith("own ")) {
                    rows.add(row(need, line, prices));
                    shown.add(line == null ? "" : line.id());
                }
            }
        }
        for (PartLine line : file.parts()) {
            if (!shown.contains(line.id())) {
                rows.add(new PartRow(
                        line.id(), line, line.count(), line.name(), line.price(), "", line.isOwn() || plan == null));
            }
        }
        return rows;
    }

    private static PartRow row(PartNeed need, @Nullable PartLine line, OwnPrices prices) {
        String name = need.name().replace(OwnPrices.EXAMPLE, "");
        PartNeed plain = new PartNeed(need.id(), name, need.count(), need.price(), need.reason());
        PartPrice before = prices.before(plain);
        boolean example = need.name().endsWith(OwnPrices.EXAMPLE) && need.price() != null;
        String beside = example
                ? "example of the sheet: " + need.price()
                : before == null ? "" : "paid before: " + before.price() + ", " + before.by();
        return new PartRow(
                line == null ? "need " + need.id() : line.id(),
                line,
                need.count(),
                name,
                prices.each(plain),
                beside,
                true);
    }
}
