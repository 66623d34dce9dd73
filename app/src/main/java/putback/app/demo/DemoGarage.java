package putback.app.demo;

import java.util.List;
import java.util.Map;
import putback.job.Stage;
import putback.store.books.Approval;
import putback.store.books.Approvals;
import putback.store.books.Arrival;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Customer;
import putback.store.books.Customers;
import putback.store.books.Finding;
import putback.store.books.Findings;
import putback.store.books.Heights;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Rechecks;
import putback.store.books.Saved;
import putback.store.books.Scope;
import putback.store.books.Settings;
import putback.store.database.Change;

/** A day at Quay Street Garage in Wrackhaven: one job at each place where a job can stand. */
public final class DemoGarage {
    private static final Map<String, String> SETTINGS = Map.of(
            "garage", "Quay Street Garage (invented)",
            "address", "4 Quay Street\nWrackhaven",
            "phone", "0555 0100",
            "rate", "62.00",
            "tax", "20",
            "sundries", "4.50",
            "currency", "cr",
            "invented", "yes",
            "warranty", "as the law of the place has it");

    private final Books books;
    private final Change change;

    private DemoGarage(Books books, Change change) {
        this.books = books;
        this.change = change;
    }

    /** Fills empty books; books in which there are cars already stay as they are. */
    public static void fill(Books books) {
        if (new Cars(books).search("", 1).isEmpty()) {
            books.write(change -> {
                new DemoGarage(books, change).write();
                return true;
            });
        }
    }

    private void write() {
        SETTINGS.forEach((name, value) -> new Settings(books).set(change, name, value));
        dory();
        Job knock = job(
                "Ilse Vann",
                "0555 0134",
                car("WH 203 K", "Orrin", "Pell 1.2", "2012"),
                "knock from the front over kerbs",
                "slow, cold, left");
        to(knock, Stage.ASKED, "", "");
        Job pads = job(
                "Bram Oster",
                "0555 0177",
                car("WH 871", "Tamsel", "Finch", "2018"),
                "brakes grind, lamp is on",
                "from second gear on");
        to(pads, Stage.PRICED, "front-brake", "pads,disc");
        Job strut = job(
                "Nadja Quill",
                "0555 0102",
                car("WH 40 T", "Orrin", "Vale", "2010"),
                "front sits low on the left",
                "always");
        Job priced = to(strut, Stage.PRICED, "front-strut", "complete-strut");
        say(priced, "Nadja Quill", "on the phone", "720.00");
        to(priced, Stage.AGREED, "front-strut", "complete-strut");
        Job done = job(
                "Piet Marlow",
                "0555 0166",
                car("WH 5 B", "Tamsel", "Dory", "2011"),
                "rear bangs, failed its test",
                "every bump");
        Job over = to(done, Stage.HANDED_OVER, "twist-beam", "damper");
        new Rechecks(books).add(change, over.id(), "2026-11-01", "141250", "wheel fasteners");
    }

    /** The car of the demonstration: approved, and waiting for its parts to be compared. */
    private void dory() {
        Job job = job(
                "Orla Quent",
                "0555 0112",
                car("WH 12 D", "Tamsel", "Dory", "2014"),
                "failed the yearly test: broken rear spring, dampers leak; bangs over every bump",
                "cold, slow, rear left loudest");
        Job priced = to(job, Stage.PRICED, "demo-van", "spring,damper,pads");
        say(priced, "Orla Quent", "here", "560.00");
        to(priced, Stage.AGREED, "demo-van", "spring,damper,pads");
        new Findings(books)
                .add(
                        change,
                        Finding.seen(
                                job.id(),
                                "rear left",
                                "brake hose is cracked at its bracket",
                                "soon",
                                "38.00",
                                "Mara"));
    }

    private Car car(String plate, String make, String model, String built) {
        return new Car("", "", plate, "", make, model, built, "km", "glovebox", "", 0);
    }

    private Job job(String owner, String phone, Car car, String complaint, String conditions) {
        Customer customer = kept(new Customers(books).save(change, new Customer("", owner, phone, "", "", "", 0)));
        Car kept = kept(new Cars(books).save(change, car.of(customer.id())));
        Heights heights = new Heights("382 mm", "384 mm", "351 mm", "366 mm");
        Arrival arrival = new Arrival(complaint, conditions, "128400", "", heights, "");
        return new Jobs(books).open(change, kept.id(), arrival, "", "Mara");
    }

    private Job to(Job job, Stage stage, String sheet, String renew) {
        Jobs jobs = new Jobs(books);
        Job named = sheet.isEmpty() ? job : kept(jobs.save(change, job.with(new Scope(sheet, renew, "both", "", "2"))));
        return stage == named.stage() ? named : kept(jobs.move(change, named, stage, "Mara", ""));
    }

    private void say(Job job, String who, String how, String upTo) {
        new Approvals(books).add(change, new Approval("", job.id(), who, how, "", true, upTo, "", "", "Mara", ""));
    }

    static <T> T kept(Saved<T> saved) {
        if (saved instanceof Saved.Done<T> done) {
            return done.value();
        }
        throw new IllegalStateException("nobody else writes these books, and still: " + saved);
    }

    /** Stages in the order of the course, for whoever makes many jobs. */
    static List<Stage> course() {
        return List.of(Stage.ASKED, Stage.LOOKED_OVER, Stage.PRICED, Stage.AGREED, Stage.UNDER_WAY, Stage.TOGETHER);
    }
}
