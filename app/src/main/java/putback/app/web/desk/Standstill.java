package putback.app.web.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import putback.app.web.frame.Shelf;
import putback.app.web.job.JobFile;
import putback.app.web.job.Ledgers;
import putback.app.web.job.PaperPages;
import putback.store.books.Books;
import putback.store.books.Events;
import putback.store.books.JobLine;
import putback.store.books.Settings;

/**
 * A job in which something broke that has no new one yet, or that stands still until somebody decides.
 *
 * @param because what broke, who said so and when; at least one
 */
public record Standstill(JobLine job, List<String> because) {
    public Standstill {
        because = List.copyOf(because);
    }

    /** Those among some jobs, in their order. Only a job in which something broke is planned for this. */
    static List<Standstill> among(List<JobLine> jobs, Books books, Shelf shelf, Ledgers ledgers) {
        List<String> ids = new ArrayList<>();
        jobs.forEach(job -> ids.add(job.id()));
        Set<String> breaking = new HashSet<>(new Events(books).breaking(ids));
        breaking.addAll(new Events(books).stopping(ids));
        List<Standstill> all = new ArrayList<>();
        for (JobLine job : jobs) {
            JobFile file = breaking.contains(job.id()) ? JobFile.open(books, job.id()) : null;
            List<String> because =
                    file == null ? List.of() : ledgers.broke(file, shelf, PaperPages.style(new Settings(books).all()));
            if (!because.isEmpty()) {
                all.add(new Standstill(job, because));
            }
        }
        return all;
    }
}
