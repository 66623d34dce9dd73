package putback.app.learning;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import putback.labour.price.OwnFigures;
import putback.store.books.Books;
import putback.store.books.Events;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.KeptEvent;
import putback.store.books.Lesson;
import putback.store.books.Taught;
import putback.store.database.StoreFailure;

/**
 * The garage's own figures, from its finished jobs. What a job taught is kept with it, and worked out again when it
 * changes; the figures of a family of sheets stay in memory until any job teaches something else.
 */
public final class Learning {
    /** So many jobs that nobody has learnt from yet are read before an answer, so that none waits for thousands. */
    private static final int AT_ONCE = 10;

    /** The newest of a family count: hands, tools and cars change, and more of them say little that is new. */
    private static final int MOST_JOBS = 500;

    private static final int MOST_FAMILIES = 100;

    private final Books books;
    private final Sheets sheets;
    private final Taught taught;
    private final Map<List<String>, Known> known = new ConcurrentHashMap<>();
    private volatile boolean caughtUp;

    private record Known(int revision, OwnFigures figures) {}

    public Learning(Books books, Sheets sheets) {
        this.books = books;
        this.sheets = sheets;
        taught = new Taught(books);
    }

    /** What was seen on cars of the family of a sheet. */
    public OwnFigures seen(String sheet) {
        return of(sheets.roots(sheet));
    }

    /**
     * The same by the sheets at the bottom.
     *
     * @param families their ids
     */
    public OwnFigures of(List<String> families) {
        catchUp(AT_ONCE);
        int revision = taught.revision();
        Known figures = known.get(families);
        if (figures == null || figures.revision != revision) {
            figures = new Known(revision, new OwnFigures(taught.of(families, MOST_JOBS)));
            if (known.size() >= MOST_FAMILIES) {
                known.clear();
            }
            known.put(families, figures);
        }
        return figures.figures;
    }

    /** Everything that all finished jobs have taught. */
    public List<Lesson> all() {
        while (!caughtUp) {
            catchUp(AT_ONCE);
        }
        return taught.all();
    }

    /** Something has changed about a job: its stage, its rust, its ledger. */
    public void learn(String id) {
        try {
            Job job = new Jobs(books).find(id).orElse(null);
            if (job != null) {
                learn(job);
            }
        } catch (StoreFailure later) {
            caughtUp = false;
        }
    }

    private void learn(Job job) {
        if (Taught.isFinished(job.stage())) {
            List<KeptEvent> ledger = new Events(books).since(job.id(), 0);
            List<Lesson> lessons = new JobLessons(sheets).of(job, ledger);
            books.write(change -> {
                taught.keep(change, job, ledger.size(), lessons);
                return lessons;
            });
        } else if (taught.isKept(job.id())) {
            books.write(change -> {
                taught.forget(change, job.id());
                return job;
            });
        }
    }

    private synchronized void catchUp(int most) {
        if (caughtUp) {
            return;
        }
        List<String> behind = taught.behind(most);
        for (String id : behind) {
            Job job = new Jobs(books).find(id).orElse(null);
            if (job != null) {
                learn(job);
            }
        }
        caughtUp = behind.size() < most;
    }
}
