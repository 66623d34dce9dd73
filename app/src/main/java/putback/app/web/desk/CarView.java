package putback.app.web.desk;

import java.util.List;
import java.util.Map;
import putback.store.books.CarSheet;
import putback.store.books.JobLine;

/**
 * A car as its page shows it.
 *
 * @param id empty for a new one
 * @param values of its fields and its owner's, as kept or as typed
 * @param doubt about the VIN; may be empty
 * @param fault what cannot be kept so; may be empty
 */
public record CarView(
        String id,
        String called,
        Map<String, String> values,
        String doubt,
        String fault,
        List<JobLine> jobs,
        List<NotDriven> notDriven,
        List<CarSheet> sheets) {
    public CarView {
        values = Map.copyOf(values);
        jobs = List.copyOf(jobs);
        notDriven = List.copyOf(notDriven);
        sheets = List.copyOf(sheets);
    }

    /** The value of a field; empty where there is none. */
    public String value(String name) {
        String value = values.get(name);
        return value == null ? "" : value;
    }
}
