package putback.store.books;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import putback.job.Stage;
import putback.store.database.Change;

/** The book of jobs. */
public final class Jobs {
    private static final String SELECT = "select " + JobRow.COLUMNS + " from job where garage = :garage";

    private final Books books;

    public Jobs(Books books) {
        this.books = books;
    }

    /** The one with this id. */
    public Optional<Job> find(String id) {
        return books.read(handle -> find(handle, id));
    }

    Optional<Job> find(Handle handle, String id) {
        return handle.createQuery(SELECT + " and id = :id")
                .bind("garage", books.garage())
                .bind("id", id)
                .map(JobRow::read)
                .findFirst();
    }

    /** Those of one car, the newest first. */
    public List<Job> ofCar(String car) {
        return books.read(handle -> handle.createQuery(SELECT + " and car = :car order by opened_at desc, id desc")
                .bind("garage", books.garage())
                .bind("car", car)
                .map(JobRow::read)
                .list());
    }

    /** Those that are about the work of another, the oldest first. */
    public List<Job> comebacksOf(String job) {
        return books.read(handle -> handle.createQuery(SELECT + " and comeback_of = :job order by opened_at, id")
                .bind("garage", books.garage())
                .bind("job", job)
                .map(JobRow::read)
                .list());
    }

    /** Those at a stage, the oldest first. */
    public List<Job> at(Stage stage, int most) {
        return books.read(
                handle -> handle.createQuery(SELECT + " and stage = :stage order by opened_at, id limit :most")
                        .bind("garage", books.garage())
                        .bind("stage", stage.words())
                        .bind("most", most)
                        .map(JobRow::read)
                        .list());
    }

    /** Those that have all the words in number, complaint, scope, findings, car or owner, the newest first. */
    public List<Job> search(String typed, int most) {
        List<String> words = Searched.words(typed);
        return books.read(handle -> Matching.all(handle, SELECT, words, "opened_at desc, id desc", most)
                .bind("garage", books.garage())
                .map(JobRow::read)
                .list());
    }

    /**
     * Opens a job and gives it the year's next number.
     *
     * @param comebackOf id of the job whose work it is about; empty for none
     */
    public Job open(Change change, String car, Arrival arrival, String comebackOf, String by) {
        String at = books.now();
        String number = new Counters(books).next(change, at.substring(0, 4));
        Job job = new Job(books.newId(), number, car, arrival, Stage.ASKED, Scope.NONE, comebackOf, at, 1);
        @Nullable String comeback = comebackOf.isEmpty() ? null : comebackOf;
        JobRow.bind(
                        change.handle()
                                .createUpdate("insert into job (id, garage, number, car, complaint, conditions,"
                                        + " distance_in, distance_out, height_front_left, height_front_right,"
                                        + " height_rear_left, height_rear_right, stage, sheet, renew, side, terms,"
                                        + " rust, comeback_of, opened_at, promised_at, search) values (:id, :garage,"
                                        + " :number, :car, :complaint, :conditions, :distanceIn, :distanceOut,"
                                        + " :frontLeft, :frontRight, :rearLeft, :rearRight, :stage, :sheet, :renew,"
                                        + " :side, :terms, :rust, :comeback, :opened, :promised, :search)"),
                        job)
                .bind("id", job.id())
                .bind("garage", books.garage())
                .bind("number", number)
                .bind("car", car)
                .bind("stage", job.stage().words())
                .bind("comeback", comeback)
                .bind("opened", at)
                .bind("search", search(change.handle(), job))
                .execute();
        new Moves(books).add(change, job.id(), job.stage(), by, "");
        return job;
    }

    /** Keeps what people edit of a job, over the version that was read. */
    public Saved<Job> save(Change change, Job job) {
        int rows = JobRow.bind(
                        change.handle()
                                .createUpdate("update job set complaint = :complaint, conditions = :conditions,"
                                        + " distance_in = :distanceIn, distance_out = :distanceOut,"
                                        + " height_front_left = :frontLeft, height_front_right = :frontRight,"
                                        + " height_rear_left = :rearLeft, height_rear_right = :rearRight,"
                                        + " sheet = :sheet, renew = :renew, side = :side, terms = :terms,"
                                        + " rust = :rust, promised_at = :promised, search = :search,"
                                        + " version = version + 1"
                                        + " where garage = :garage and id = :id and version = :version"),
                        job)
                .bind("garage", books.garage())
                .bind("id", job.id())
                .bind("version", job.version())
                .bind("search", search(change.handle(), job))
                .execute();
        change.tell("job:" + job.id());
        return Outcome.of(rows, find(change.handle(), job.id()));
    }

    /** Moves a job to a stage, over the version that was read; whether it may go there is asked before. */
    public Saved<Job> move(Change change, Job job, Stage to, String by, String why) {
        int rows = change.handle()
                .createUpdate("update job set stage = :stage, version = version + 1"
                        + " where garage = :garage and id = :id and version = :version")
                .bind("stage", to.words())
                .bind("garage", books.garage())
                .bind("id", job.id())
                .bind("version", job.version())
                .execute();
        if (rows == 1) {
            new Moves(books).add(change, job.id(), to, by, why);
        }
        change.tell("job:" + job.id());
        return Outcome.of(rows, find(change.handle(), job.id()));
    }

    /** Adds words by which a job is found, until it is kept again. */
    void alsoFoundBy(Change change, String job, String words) {
        change.handle()
                .createUpdate("update job set search = search || :words where garage = :garage and id = :id")
                .bind("words", " " + Searched.text(words))
                .bind("garage", books.garage())
                .bind("id", job)
                .execute();
    }

    private String search(Handle handle, Job job) {
        String car = handle.createQuery("select search from car where garage = :garage and id = :car")
                .bind("garage", books.garage())
                .bind("car", job.car())
                .mapTo(String.class)
                .findFirst()
                .orElse("");
        String found = String.join(
                " ",
                handle.createQuery("select words from finding where job = :job order by at, id")
                        .bind("job", job.id())
                        .mapTo(String.class)
                        .list());
        return Searched.text(
                        job.number(), job.arrival().complaint(), job.scope().renew(), found) + " " + car;
    }
}
