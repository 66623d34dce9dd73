package putback.app.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import putback.job.Stage;
import putback.store.books.Arrival;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Customer;
import putback.store.books.Customers;
import putback.store.books.Heights;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Rechecks;
import putback.store.books.Scope;
import putback.store.database.Change;

/** Years of an invented garage's work, the same for the same seed. */
public final class BigGarage {
    private static final int CARS_AT_ONCE = 100;
    private static final List<String> FIRST =
            List.of("Orla", "Ilse", "Bram", "Nadja", "Piet", "Teo", "Runa", "Jory", "Maud", "Ansel", "Vida", "Kees");
    private static final List<String> LAST =
            List.of("Quent", "Vann", "Oster", "Quill", "Marlow", "Brine", "Harrow", "Tide", "Wrack", "Sallow", "Fenn");
    private static final List<String> MAKES = List.of("Tamsel", "Orrin", "Halvard", "Pike");
    private static final List<String> MODELS = List.of("Dory", "Finch", "Vale", "Pell", "Heron", "Skiff");
    private static final List<String> COMPLAINTS = List.of(
            "knocks over bumps",
            "pulls to the left",
            "brakes grind",
            "leans on one side",
            "drones from 60 on",
            "failed its yearly test: damper leaks",
            "steering wheel is not straight",
            "rattles when cold");
    private static final List<Scope> SCOPES = List.of(
            new Scope("front-strut", "strut", "both", "", "2"),
            new Scope("front-strut", "link", "left", "", "3"),
            new Scope("front-brake", "pads,disc", "both", "", "1"),
            new Scope("twist-beam", "damper", "both", "", "3"),
            new Scope("demo-van", "spring,damper", "both", "", "2"));

    private final Books books;
    private final Random random;

    private BigGarage(Books books, long seed) {
        this.books = books;
        random = new Random(seed);
    }

    /** Adds so many cars, with so many jobs spread over them; the last forty jobs are still open. */
    public static void fill(Books books, int cars, int jobs, long seed) {
        new BigGarage(books, seed).write(cars, jobs);
    }

    private void write(int cars, int jobs) {
        List<String> ids = new ArrayList<>();
        int made = 0;
        while (ids.size() < cars) {
            int more = Math.min(CARS_AT_ONCE, cars - ids.size());
            int upTo = (int) ((long) jobs * (ids.size() + more) / cars);
            int from = made;
            books.write(change -> {
                for (int i = 0; i < more; i++) {
                    ids.add(car(change));
                }
                for (int i = from; i < upTo; i++) {
                    job(change, ids.get(random.nextInt(ids.size())), jobs - i);
                }
                return upTo;
            });
            made = upTo;
        }
    }

    private String car(Change change) {
        String name = one(FIRST) + " " + one(LAST);
        String phone = String.format(Locale.ROOT, "0555 %04d", random.nextInt(10_000));
        Customer owner = DemoGarage.kept(
                new Customers(books).save(change, new Customer("", name, phone, "", "Wrackhaven", "", 0)));
        String plate = String.format(Locale.ROOT, "WH %d %c", random.nextInt(10_000), 'A' + random.nextInt(26));
        String built = String.valueOf(2002 + random.nextInt(22));
        Car car = new Car("", owner.id(), plate, "", one(MAKES), one(MODELS), built, "km", "", "", 0);
        return DemoGarage.kept(new Cars(books).save(change, car)).id();
    }

    private void job(Change change, String car, int left) {
        Jobs jobs = new Jobs(books);
        String distance = String.valueOf(20_000 + random.nextInt(200_000));
        Arrival arrival = new Arrival(one(COMPLAINTS), "", distance, "", Heights.NONE, "");
        Job job = jobs.open(change, car, arrival, "", "Mara");
        Job named = DemoGarage.kept(jobs.save(change, job.with(SCOPES.get(random.nextInt(SCOPES.size())))));
        List<Stage> course = DemoGarage.course();
        Stage stage = left <= 40
                ? course.get(left % course.size())
                : random.nextInt(20) == 0 ? Stage.DECLINED : Stage.HANDED_OVER;
        if (stage != named.stage()) {
            jobs.move(change, named, stage, "Mara", "");
        }
        if (stage == Stage.HANDED_OVER && left < 200 && random.nextInt(8) == 0) {
            new Rechecks(books).add(change, job.id(), "2026-11-" + (10 + random.nextInt(18)), "", "wheel fasteners");
        }
    }

    private String one(List<String> words) {
        return words.get(random.nextInt(words.size()));
    }
}
