package putback.store.backup;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
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
import putback.store.books.Heights;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.KeptEstimate;
import putback.store.books.KeptEstimates;
import putback.store.books.Saved;
import putback.store.books.Settings;
import putback.store.database.Database;
import putback.store.photos.PhotoFiles;

/** Books with something of everything in them, spelled as awkwardly as people do. */
final class FullBooks {
    static final Clock NOON = Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC);
    static final String AWKWARD = "Zoë \"Q\" O'Hara\\\n\t\u2028 €½ \uD83D\uDD27 ' -- ; <b>";

    private static final int FIRST_WITH_ESTIMATES = 4;

    private FullBooks() {}

    /** Fills a database. Returns the hash of a photo's file. */
    static String fill(Database database, Path photos) {
        Books books = new Books(database, "g1", NOON);
        Customer asked = new Customer("", AWKWARD, "0555 12", "", AWKWARD, "", 0);
        Customer customer = done(books.write(change -> new Customers(books).save(change, asked)));
        Car car = done(books.write(change -> new Cars(books)
                .save(change, new Car("", customer.id(), "WH 12", "", "Tamsel", "Dory", "2014", "km", "", "", 0))));
        done(books.write(change -> new CarSheets(books).add(change, car.id(), 0, "a: 1\n", "Mara", "first")));
        Job job = job(books, car, "");
        Job back = job(books, car, job.id());
        job(books, car, back.id());
        books.write(change -> new Jobs(books).move(change, job, Stage.LOOKED_OVER, "Teo", AWKWARD));
        if (database.schema() < FIRST_WITH_ESTIMATES) {
            books.write(change -> change.handle()
                    .execute(
                            "insert into approval (id, job, who, how, at, yes, up_to, total, words, taken_by) values"
                                    + " ('a', ?, 'Orla', 'phone', '2026-03-02T12:00:00.000Z', 1, '420.00', '388.10',"
                                    + " 'go', 'Mara')",
                            job.id()));
        } else {
            sayYes(books, job);
        }
        books.write(change -> {
            new Settings(books).set(change, "name", AWKWARD);
            return null;
        });
        String hash = new PhotoFiles(photos).keep(new byte[] {1, 2, 3, 4, 5});
        books.write(change -> change.handle()
                .execute(
                        "insert into photo (id, job, hash, type, bytes, at, by_name) values ('p', ?, ?, 'image/png', 5,"
                                + " '2026-03-02T12:00:00.000Z', 'Teo')",
                        job.id(),
                        hash));
        return hash;
    }

    private static Job job(Books books, Car car, String backFrom) {
        Arrival arrival = new Arrival("knocks", AWKWARD, "128400", "", Heights.NONE, "");
        return books.write(change -> new Jobs(books).open(change, car.id(), arrival, backFrom, "Mara"));
    }

    private static void sayYes(Books books, Job job) {
        KeptEstimate kept = books.write(change -> new KeptEstimates(books).keep(change, estimate(job)));
        Approval said =
                new Approval("", job.id(), "Orla", "phone", "", true, "420.00", "388.10", "go", "Mara", kept.id());
        books.write(change -> new Approvals(books).add(change, said));
    }

    private static KeptEstimate estimate(Job job) {
        KeptEstimate.Line line = new KeptEstimate.Line(AWKWARD, "1", "each", "64.00");
        return new KeptEstimate(
                "", job.id(), 0, "", "Teo", AWKWARD, "64.00", "70.00", "70.00", "€", List.of(AWKWARD), List.of(line));
    }

    private static <T> T done(Saved<T> saved) {
        return ((Saved.Done<T>) saved).value();
    }
}
