package putback.app.web.desk;

import java.util.List;
import java.util.Map;
import putback.job.Stage;
import putback.store.books.Car;
import putback.store.books.CarSheet;
import putback.store.books.JobLine;

/**
 * A car as its page shows it.
 *
 * @param id empty for a new one
 * @param values of its fields and its owner's, as kept or as typed
 * @param doubt about the VIN; may be empty
 * @param fault what cannot be kept so; may be empty
 * @param alike cars in the books that have the plate of a new one
 */
public record CarView(
        String id,
        String called,
        Map<String, String> values,
        String doubt,
        String fault,
        List<JobLine> jobs,
        List<NotDriven> notDriven,
        List<CarSheet> sheets,
        List<Car> alike) {
    public CarView {
        alike = List.copyOf(alike);
        values = Map.copyOf(values);
        jobs = List.copyOf(jobs);
        notDriven = List.copyOf(notDriven);
        sheets = List.copyOf(sheets);
    }

    /** Those of its jobs that are still open. */
    public List<JobLine> open() {
        return jobs.stream()
                .filter(job -> job.stage() != Stage.HANDED_OVER && job.stage() != Stage.DECLINED)
                .toList();
    }

    /** Those of its jobs whose car was given back: only they can come back. */
    public List<JobLine> handedOver() {
        return jobs.stream().filter(job -> job.stage() == Stage.HANDED_OVER).toList();
    }

    /** The value of a field; empty where there is none. */
    public String value(String name) {
        String value = values.get(name);
        return value == null ? "" : value;
    }
}
