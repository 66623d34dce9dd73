package putback.app.web.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Question;
import putback.app.web.planning.SheetView;
import putback.store.books.CarSheet;
import putback.store.books.Job;

/**
 * The fill-in card as its page shows it.
 *
 * @param car what it is called
 * @param carId by which its pages are found
 * @param job for which it is filled in; null for none
 * @param seen number of the sheet that the card was made from
 * @param question what is renewed
 * @param bases on which the car's sheet is built: by their ids, as the form hands them on
 * @param builtOn the same by their titles
 * @param said what has to be read first; empty for nothing
 * @param faults of the sheet that belong to no field
 * @param split joints shown for each side
 * @param parts between which another fixing may be
 * @param absent names of what is not on this car
 * @param history of the car's own sheet, the newest first
 * @param pdf address of the same card on paper; empty as long as nothing is kept
 */
public record CardView(
        String car,
        String carId,
        @Nullable Job job,
        int seen,
        Question question,
        String renewed,
        List<String> bases,
        String builtOn,
        List<CardRow> rows,
        String said,
        List<String> faults,
        List<String> split,
        List<SheetView.Choice> parts,
        List<String> kinds,
        List<String> absent,
        List<CarSheet> history,
        String torqueUnit,
        String pdf,
        String plan) {
    public CardView {
        rows = List.copyOf(rows);
        history = List.copyOf(history);
    }

    /** Where typing begins: what is wrong, else the first torque that is not known yet, else the first. */
    public String start() {
        String first = "";
        String open = "";
        for (CardRow row : rows) {
            CardRow.Field torque = row.field("torque");
            if (!torque.fault().isEmpty()) {
                return row.id();
            }
            if (row.turns()) {
                first = first.isEmpty() ? row.id() : first;
                open = open.isEmpty() && torque.value().isEmpty() ? row.id() : open;
            }
        }
        return open.isEmpty() ? first : open;
    }

    /** What is not on this car, as it can be said. */
    public String missing() {
        return String.join(", ", absent).replace('-', ' ').replace('.', ' ');
    }

    /** How many torques are known only from the sheets below, or not at all. */
    public long open() {
        return rows.stream()
                .filter(row -> row.turns() && row.field("torque").value().isEmpty())
                .count();
    }
}
