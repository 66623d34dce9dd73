package putback.store.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.seized.Attempt;
import putback.labour.seized.UsualHazards;
import putback.quantity.Minutes;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;

/** Reads the resorts of one fastener, every figure as it is written. */
record AttemptReader(Fields file, Faults faults) {
    List<Attempt> attempts() {
        List<Attempt> attempts = new ArrayList<>();
        for (Entry entry : ResortsReader.section(file, "resorts", faults)) {
            attempts.add(attempt(entry));
        }
        return attempts;
    }

    private Attempt attempt(Entry entry) {
        String id = entry.key().text();
        Fields resort = Fields.of(values(entry), entry.key().place(), "resort " + id, Keys.ATTEMPT, faults);
        if (entry.value() instanceof Entries) {
            resort.require("minutes", "chance");
        }
        Fields breaks = resort.map("breaks", Keys.BREAKS);
        if (breaks != null) {
            breaks.require("chance", "price");
        }
        return new Attempt(
                id,
                resort.amounts().minutes("minutes", Minutes.ZERO),
                share(resort),
                breaks == null ? BigDecimal.ZERO : share(breaks),
                breaks == null ? BigDecimal.ZERO : orNothing(breaks.amounts().price("price")),
                orNothing(resort.amounts().price("scraps")),
                ResortsReader.words(resort, "when", SeizedWords.REFUSALS),
                resort.has("hazards")
                        ? ResortsReader.words(resort, "hazards", SeizedWords.HAZARDS)
                        : UsualHazards.of(id));
    }

    private Entries values(Entry entry) {
        if (entry.value() instanceof Entries values) {
            return values;
        }
        faults.add(
                entry.place(),
                entry.key().text() + " is " + entry.value().phrase()
                        + "; write a map such as {minutes: 6, chance: 0.6}");
        return Entries.none(entry.place());
    }

    private static BigDecimal share(Fields fields) {
        return orNothing(fields.amounts().number("chance", BigDecimal.ZERO, BigDecimal.ONE));
    }

    private static BigDecimal orNothing(@Nullable BigDecimal value) {
        return value == null ? BigDecimal.ZERO : value;
    }
}
