package putback.benchmarks;

import java.time.Clock;
import java.util.List;
import java.util.Random;
import putback.job.Stage;
import putback.store.books.Approval;
import putback.store.books.Approvals;
import putback.store.books.Arrival;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.CarSheets;
import putback.store.books.Cars;
import putback.store.books.Customer;
import putback.store.books.Customers;
import putback.store.books.Finding;
import putback.store.books.Findings;
import putback.store.books.Heights;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.PartLine;
import putback.store.books.PartLines;
import putback.store.books.Saved;
import putback.store.database.Change;

/** An invented garage of some years: the same for the same seed. */
final class GarageInFull {
    /** What is done to a car in a job, each kept as an event. */
    static final int EVENTS_A_JOB = 60;

    private static final int AT_ONCE = 100;
    private static final List<String> MAKES = List.of("Tamsel", "Corvane", "Ostrik", "Belmar");
    private static final List<Stage> COURSE = List.of(Stage.LOOKED_OVER, Stage.PRICED, Stage.AGREED);

    private final Books books;
    private final Random random = new Random(7);
    private int events;

    GarageInFull(Books books) {
        this.books = books;
    }

    /** The clock that the ids are made by. */
    static Books books(putback.store.database.Database database) {
        return new Books(database, "g1", Clock.systemUTC());
    }

    void fill(int cars, int jobs) {
        String[] ids = new String[cars];
        for (int from = 0; from < cars; from += AT_ONCE) {
            int first = from;
            books.write(change -> {
                for (int i = first; i < Math.min(cars, first + AT_ONCE); i++) {
                    ids[i] = car(change, i);
                }
                return null;
            });
        }
        for (int from = 0; from < jobs; from += AT_ONCE) {
            int first = from;
            books.write(change -> {
                for (int i = first; i < Math.min(jobs, first + AT_ONCE); i++) {
                    job(change, ids[random.nextInt(cars)]);
                }
                return null;
            });
        }
    }

    private String car(Change change, int number) {
        Customer asked = new Customer(
                "", "Customer " + number, "0555 " + number, "c" + number + "@example.org", "Quay " + number, "", 0);
        Customer customer = done(new Customers(books).save(change, asked));
        String make = MAKES.get(number % MAKES.size());
        Car car = new Car("", customer.id(), "WH " + number, "", make, "Dory", "2014", "km", "glovebox", "", 0);
        String id = done(new Cars(books).save(change, car)).id();
        if (number % 4 == 0) {
            new CarSheets(books).add(change, id, 0, "joints:\n  strut-to-hub: {torque: 98 N·m}\n", "Mara", "");
        }
        return id;
    }

    private void job(Change change, String car) {
        Arrival arrival = new Arrival(
                "Knocks over bumps, worse when cold", "left front", "128400", "128412", Heights.NONE, "2026-03-04");
        Job job = new Jobs(books).open(change, car, arrival, "", "Mara");
        for (Stage stage : COURSE) {
            job = done(new Jobs(books).move(change, job, stage, "Teo", ""));
        }
        String id = job.id();
        new Approvals(books)
                .add(
                        change,
                        new Approval("", id, "Customer", "phone", "", true, "420.00", "388.10", "go on", "Mara", ""));
        new Findings(books).add(change, Finding.seen(id, "left rear", "hose cracked", "soon", "38.00", "Teo"));
        for (int i = 0; i < 3; i++) {
            new PartLines(books)
                    .add(change, PartLine.wanted(id, "left.part" + i, "Part", 1).priced("44.50", "Teo"));
        }
        for (int i = 1; i <= EVENTS_A_JOB; i++) {
            event(change, id, i);
        }
    }

    /** As long as an event is: a step, its joint, its torque and wrench. */
    private void event(Change change, String job, int number) {
        String id = Integer.toHexString(events++);
        change.handle()
                .execute(
                        "insert into event (job, number, id, device, seq, body, hash, received_at)"
                                + " values (?, ?, ?, 'tablet-1', ?, ?, ?, ?)",
                        job,
                        number,
                        "01jn5c3v6k8q2r4t7w9y" + id,
                        number,
                        "{\"id\":\"01jn5c3v6k8q2r4t7w9y" + id + "\",\"at\":\"2026-03-02T09:14:05Z\",\"by\":\"Mara\","
                                + "\"do\":\"tighten\",\"joint\":\"left.strut-to-hub\",\"torqueNm\":98,\"wrench\":\"W2\"}",
                        Long.toHexString(random.nextLong()).repeat(4),
                        books.now());
    }

    private static <T> T done(Saved<T> saved) {
        if (saved instanceof Saved.Done<T> kept) {
            return kept.value();
        }
        throw new IllegalStateException("somebody else writes here");
    }
}
