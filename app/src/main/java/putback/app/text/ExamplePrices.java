package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.store.sheets.SheetReader;

/** Prices that are nobody's: those that the stock sheets have as examples say so wherever they are shown. */
public final class ExamplePrices {
    /** Behind the name of whatever rests on one. */
    public static final String MARK = " (example price)";

    private ExamplePrices() {}

    /** The same need, with the mark where it has a price. */
    public static PartNeed marked(PartNeed need) {
        return need.price() == null
                ? need
                : new PartNeed(need.id(), need.name() + MARK, need.count(), need.price(), need.reason());
    }

    /** The plan with all its prices marked. */
    public static Plan marked(Plan plan) {
        List<PartNeed> needs = new ArrayList<>();
        for (PartNeed need : plan.parts()) {
            needs.add(marked(need));
        }
        return plan.withParts(needs);
    }

    /**
     * What to know about a price on a stock sheet.
     *
     * @param rateGiven whether somebody said what an hour costs
     */
    public static List<String> notes(Plan plan, boolean rateGiven) {
        List<String> names = new ArrayList<>();
        for (PartNeed need : plan.parts()) {
            if (need.price() != null) {
                names.add(need.name());
            }
        }
        List<String> notes = new ArrayList<>();
        if (!names.isEmpty()
                && SheetReader.stockIds().contains(plan.assembly().sheet().id())) {
            notes.add("Example prices of the stock sheet, not yours: " + String.join("; ", names) + ".");
        }
        if (!rateGiven) {
            notes.add("The price of an hour is an example too: nobody has said what it is here.");
        }
        return notes;
    }
}
