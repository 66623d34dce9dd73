package putback.store.books;

import java.util.Collection;
import java.util.List;
import org.jdbi.v3.core.statement.PreparedBatch;
import putback.job.Stage;
import putback.labour.price.Observed;
import putback.store.database.Change;

/** What the garage's finished jobs have taught: kept job by job, so that no price has to read ledgers. */
public final class Taught {
    private static final String COUNTER = "taught";
    private static final List<String> FINISHED = List.of(Stage.TOGETHER.words(), Stage.HANDED_OVER.words());
    /** Written so that no index on it is taken: there are many of a family, and few of a job. */
    private static final String FAMILY = "coalesce(family, '') in (<families>)";

    private static final String SELECT = "select family, kind, about, minutes, grade, yes, of_all from lesson"
            + " join job on job.id = lesson.job where garage = :garage and stage in (<finished>) ";

    private final Books books;

    public Taught(Books books) {
        this.books = books;
    }

    /** Whether a job at this stage teaches. */
    public static boolean isFinished(Stage stage) {
        return FINISHED.contains(stage.words());
    }

    /** Steps on whenever anything is kept or taken away. */
    public int revision() {
        return new Counters(books).now(COUNTER);
    }

    /** Of finished jobs those whose lessons are not kept as the job stands now, the newest first. */
    public List<String> behind(int most) {
        return books.read(handle -> handle.createQuery("select job.id from job left join taught on taught.job = job.id"
                        + " where garage = :garage and stage in (<finished>)"
                        + " and exists (select 1 from event where event.job = job.id)"
                        + " and (taught.job is null or taught.version <> job.version or taught.events <>"
                        + " (select max(number) from event where event.job = job.id))"
                        + " order by opened_at desc, job.id desc limit :most")
                .bind("garage", books.garage())
                .bindList("finished", FINISHED)
                .bind("most", most)
                .mapTo(String.class)
                .list());
    }

    /**
     * Keeps what a job taught, in place of what was kept of it before.
     *
     * @param job as it was read
     * @param events how many of its ledger were read
     */
    public void keep(Change change, Job job, int events, List<Lesson> lessons) {
        boolean had = forgetLessons(change, job.id());
        change.handle()
                .createUpdate("insert into taught (job, version, events, at) values (:job, :version, :events, :at)"
                        + " on conflict (job) do update set version = :version, events = :events, at = :at")
                .bind("job", job.id())
                .bind("version", job.version())
                .bind("events", events)
                .bind("at", books.now())
                .execute();
        insert(change, job.id(), lessons);
        if (had || !lessons.isEmpty()) {
            new Counters(books).step(change, COUNTER);
        }
    }

    private static void insert(Change change, String job, List<Lesson> lessons) {
        if (lessons.isEmpty()) {
            return;
        }
        try (PreparedBatch rows = change.handle()
                .prepareBatch("insert into lesson (job, number, family, kind, about, minutes, grade, yes, of_all)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
            int number = 0;
            for (Lesson lesson : lessons) {
                number++;
                LessonRow row = LessonRow.of(lesson.seen());
                rows.add(
                        job,
                        number,
                        lesson.family(),
                        row.kind(),
                        row.about(),
                        row.minutes(),
                        row.grade(),
                        row.yes(),
                        row.of());
            }
            rows.execute();
        }
    }

    /** Of a job that is worked on again nothing counts until it is finished. */
    public void forget(Change change, String job) {
        boolean had = forgetLessons(change, job);
        change.handle()
                .createUpdate("delete from taught where job = :job")
                .bind("job", job)
                .execute();
        if (had) {
            new Counters(books).step(change, COUNTER);
        }
    }

    /** Whether anything is kept of a job, if only that it taught nothing. */
    public boolean isKept(String job) {
        return books.read(handle -> handle.createQuery("select 1 from taught where job = :job")
                .bind("job", job)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent());
    }

    private static boolean forgetLessons(Change change, String job) {
        return change.handle()
                        .createUpdate("delete from lesson where job = :job")
                        .bind("job", job)
                        .execute()
                > 0;
    }

    /**
     * What was seen on cars of some families, job by job in the order of their ids.
     *
     * @param most so many jobs at most, the newest
     */
    public List<Observed> of(Collection<String> families, int most) {
        if (families.isEmpty()) {
            return List.of();
        }
        return books.read(handle -> handle.createQuery(SELECT + "and " + FAMILY + " and lesson.job in ("
                        + "select newer.id from job newer where newer.garage = :garage and newer.stage in (<finished>)"
                        + " and exists (select 1 from lesson one where one.job = newer.id and " + FAMILY + ")"
                        + " order by newer.opened_at desc, newer.id desc limit :most)"
                        + " order by lesson.job, lesson.number")
                .bind("garage", books.garage())
                .bindList("finished", FINISHED)
                .bindList("families", List.copyOf(families))
                .bind("most", most)
                .map((row, context) -> LessonRow.read(row).seen())
                .list());
    }

    /** What was seen on all cars, in the same order. */
    public List<Lesson> all() {
        return books.read(handle -> handle.createQuery(SELECT + "order by lesson.job, lesson.number")
                .bind("garage", books.garage())
                .bindList("finished", FINISHED)
                .map((row, context) ->
                        new Lesson(row.getString("family"), LessonRow.read(row).seen()))
                .list());
    }
}
