package putback.app.web.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import putback.app.web.frame.Shelf;
import putback.app.web.job.JobFile;
import putback.app.web.job.Ledgers;
import putback.store.books.Books;
import putback.store.books.Events;
import putback.store.books.JobLine;

/**
 * A job whose car is not to be driven.
 *
 * @param because what stays open on purpose, by whom and why; at least one
 */
public record NotDriven(JobLine job, List<String> because) {
    public NotDriven {
        because = List.copyOf(because);
    }

    /** Those among some jobs, in their order. Only a job in which something was carried open is planned for this. */
    static List<NotDriven> among(List<JobLine> jobs, Books books, Shelf shelf, Ledgers ledgers) {
        List<String> ids = new ArrayList<>();
        jobs.forEach(job -> ids.add(job.id()));
        Set<String> carrying = new Events(books).carrying(ids);
        List<NotDriven> all = new ArrayList<>();
        for (JobLine job : jobs) {
            JobFile file = carrying.contains(job.id()) ? JobFile.open(books, job.id()) : null;
            List<String> because = file == null ? List.of() : ledgers.notDriven(file, shelf);
            if (!because.isEmpty()) {
                all.add(new NotDriven(job, because));
            }
        }
        return all;
    }
}
