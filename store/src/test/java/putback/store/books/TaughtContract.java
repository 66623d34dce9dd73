package putback.store.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import putback.job.Stage;
import putback.labour.price.Observed;
import putback.labour.seized.RustGrade;
import putback.ledger.Did;
import putback.store.database.Database;

/** What the books promise of what jobs have taught, whichever database they lie in. */
abstract class TaughtContract {
    private static final Observed TOOK = new Observed.Took("strut-to-hub", true, 6.25);
    private static final Observed CLOSED = new Observed.Took("strut-to-hub", false, 7);
    private static final Observed RUSTED = new Observed.Rusted("strut-to-hub", RustGrade.SWOLLEN, 1, 2);
    private static final Observed TRIED = new Observed.Tried("heat", true, 4.5);
    private static final Observed NO_CLOCK = new Observed.Tried("penetrant", false, 0);

    private Database database;
    private Books books;
    private Taught taught;

    abstract Database open();

    @BeforeEach
    void openBooks() {
        database = open();
        books = new Books(database, "g1", new Seconds());
        taught = new Taught(books);
    }

    @AfterEach
    void closeBooks() {
        database.close();
    }

    private Job job(Stage stage) {
        Car car = new Car("", "", "WH 12", "", "Tamsel", "Dory", "2014", "km", "", "", 0);
        Job job = books.write(change -> {
            Saved<Car> saved = new Cars(books).save(change, car);
            Arrival arrival = new Arrival("knocks", "", "", "", Heights.NONE, "");
            return new Jobs(books)
                    .open(change, ((Saved.Done<Car>) saved).value().id(), arrival, "", "Mara");
        });
        new Events(books).append(job.id(), List.of(Doing.of("tab", 1, Did.UNDO, "left.strut-to-hub")));
        return move(job, stage);
    }

    private Job move(Job job, Stage stage) {
        Saved<Job> moved = books.write(change -> new Jobs(books).move(change, job, stage, "Mara", ""));
        return ((Saved.Done<Job>) moved).value();
    }

    private void keep(Job job, String family, Observed... seen) {
        List<Lesson> lessons =
                List.of(seen).stream().map(one -> new Lesson(family, one)).toList();
        books.write(change -> {
            taught.keep(change, job, 1, lessons);
            return job;
        });
    }

    @Test
    void whatAJobTaught_isReadAsItWasKept_byFamily_andByThisGarageOnly() {
        keep(job(Stage.HANDED_OVER), "front-strut", TOOK, CLOSED, RUSTED, TRIED, NO_CLOCK);
        keep(job(Stage.TOGETHER), "twist-beam", TRIED);
        assertThat(taught.of(List.of("front-strut"), 9)).containsExactly(TOOK, CLOSED, RUSTED, TRIED, NO_CLOCK);
        assertThat(taught.of(List.of("twist-beam"), 9)).containsExactly(TRIED);
        assertThat(taught.of(List.of("front-strut", "twist-beam"), 9)).hasSize(6);
        assertThat(taught.of(List.of(), 9)).isEmpty();
        assertThat(taught.all()).hasSize(6).contains(new Lesson("twist-beam", TRIED));
        assertThat(new Taught(new Books(database, "g2", Clock.systemUTC())).all())
                .isEmpty();
    }

    @Test
    void ofManyJobs_onlyTheNewestCount() {
        keep(job(Stage.HANDED_OVER), "front-strut", TOOK);
        keep(job(Stage.HANDED_OVER), "front-strut", CLOSED);
        keep(job(Stage.HANDED_OVER), "front-strut", TRIED, RUSTED);
        keep(job(Stage.HANDED_OVER), "twist-beam", NO_CLOCK);
        assertThat(taught.of(List.of("front-strut"), 2)).containsExactly(CLOSED, TRIED, RUSTED);
    }

    @Test
    void whatIsKeptAgain_takesThePlaceOfWhatWasThere_andTheRevisionStepsOn() {
        Job job = job(Stage.HANDED_OVER);
        assertThat(taught.revision()).isZero();
        keep(job, "front-strut", TOOK, RUSTED);
        int before = taught.revision();
        keep(job, "front-strut", CLOSED);
        assertThat(taught.of(List.of("front-strut"), 9)).containsExactly(CLOSED);
        assertThat(taught.revision()).isGreaterThan(before);
        int after = taught.revision();
        keep(job(Stage.TOGETHER), "front-strut");
        assertThat(taught.revision()).as("nothing was taught").isEqualTo(after);
    }

    @Test
    void aJobThatIsWorkedOnAgain_teachesNothing_evenBeforeItIsForgotten() {
        Job job = job(Stage.TOGETHER);
        keep(job, "front-strut", TOOK);
        assertThat(taught.isKept(job.id())).isTrue();
        move(job, Stage.UNDER_WAY);
        assertThat(taught.all()).isEmpty();
        books.write(change -> {
            taught.forget(change, job.id());
            return job;
        });
        assertThat(taught.isKept(job.id())).isFalse();
    }

    @Test
    void aFinishedJobIsBehind_untilItIsKept_andAgainWhenItOrItsLedgerGrew() {
        job(Stage.UNDER_WAY);
        Job job = job(Stage.TOGETHER);
        assertThat(taught.behind(9)).containsExactly(job.id());
        keep(job, "front-strut", TOOK);
        assertThat(taught.behind(9)).isEmpty();
        Job moved = move(job, Stage.HANDED_OVER);
        assertThat(taught.behind(9)).containsExactly(job.id());
        keep(moved, "front-strut", TOOK);
        new Events(books).append(job.id(), List.of(Doing.of("tab", 2, Did.START, "left.strut-to-hub")));
        assertThat(taught.behind(9)).containsExactly(job.id());
    }

    /** Every look at it is a second later. */
    private static final class Seconds extends Clock {
        private Instant now = Instant.parse("2026-03-02T12:00:00Z");

        @Override
        public Instant instant() {
            now = now.plusSeconds(1);
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
