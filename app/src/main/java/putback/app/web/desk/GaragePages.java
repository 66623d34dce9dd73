package putback.app.web.desk;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.app.web.job.ArrivalForm;
import putback.app.web.job.JobView;
import putback.app.web.job.Ledgers;
import putback.job.Built;
import putback.job.Stage;
import putback.quantity.Parsed;
import putback.quantity.Shown;
import putback.store.books.Arrival;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.CarSheets;
import putback.store.books.Cars;
import putback.store.books.Customer;
import putback.store.books.Customers;
import putback.store.books.Job;
import putback.store.books.JobLine;
import putback.store.books.JobLines;
import putback.store.books.Jobs;
import putback.store.books.Recheck;
import putback.store.books.Rechecks;
import putback.store.books.Saved;
import putback.store.books.Scope;

/** The day, the search, customers and cars. */
public final class GaragePages implements PageGroup {
    private static final int MOST_OPEN = 200;
    private static final int MOST_FOUND = 30;

    private final Replies replies;
    private final Books books;
    private final Shelf shelf;
    private final Ledgers ledgers;

    public GaragePages(Replies replies, Books books, Shelf shelf, Ledgers ledgers) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
        this.ledgers = ledgers;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/", this::day);
        routes.get("/search", this::search);
        routes.get("/car", context -> show(context, blank(Replies.typed(context))));
        routes.post("/car", this::save);
        routes.get("/car/{id}", this::car);
        routes.post("/car/{id}/job", this::openJob);
    }

    private void day(Context context) {
        List<JobLine> open = new JobLines(books).open(MOST_OPEN);
        String today = LocalDate.now(books.clock()).toString();
        List<DayView.Due> due = new ArrayList<>();
        for (Recheck recheck : new Rechecks(books).due(today, MOST_FOUND)) {
            new JobLines(books).find(recheck.job()).ifPresent(job -> due.add(new DayView.Due(recheck, job)));
        }
        List<NotDriven> notDriven = NotDriven.among(open, books, shelf, ledgers);
        List<Standstill> standstills = Standstill.among(open, books, shelf, ledgers);
        String now = LocalDateTime.now(books.clock()).toString();
        replies.show(context, "day.jte", DayView.of(open, due, notDriven, standstills, now));
    }

    private void search(Context context) {
        String typed = Replies.typed(context).getOrDefault("q", "").strip();
        boolean blank = typed.codePoints().noneMatch(Character::isLetterOrDigit);
        FoundView found = new FoundView(
                typed,
                blank ? List.of() : new Cars(books).search(typed, MOST_FOUND),
                blank ? List.of() : new JobLines(books).search(typed, MOST_FOUND),
                blank ? List.of() : people(typed));
        replies.show(context, "found.jte", found);
    }

    private List<FoundView.Person> people(String typed) {
        List<FoundView.Person> people = new ArrayList<>();
        for (Customer customer : new Customers(books).search(typed, MOST_FOUND)) {
            people.add(new FoundView.Person(customer, new Cars(books).ofCustomer(customer.id())));
        }
        return people;
    }

    private CarView blank(Map<String, String> typed) {
        return new CarView("", "A car", typed, "", "", List.of(), List.of(), List.of(), List.of());
    }

    private void show(Context context, CarView view) {
        replies.show(context, "car.jte", view);
    }

    private void car(Context context) {
        String id = context.pathParam("id");
        Car car = new Cars(books).find(id).orElse(null);
        if (car == null) {
            replies.missing(context, "car", id);
            return;
        }
        Customer owner = new Customers(books).find(car.customer()).orElse(null);
        Map<String, String> values = values(car, owner);
        for (String name : List.of("renew", "side")) {
            values.put(name, String.join(",", context.queryParams(name)));
        }
        show(context, view(car, values, "", List.of()));
    }

    private CarView view(Car car, Map<String, String> values, String fault, List<Car> alike) {
        List<JobLine> jobs = car.id().isEmpty() ? List.of() : new JobLines(books).ofCar(car.id());
        return new CarView(
                car.id(),
                car.called(),
                values,
                JobView.doubt(car.vin()),
                fault,
                jobs,
                NotDriven.among(jobs, books, shelf, ledgers),
                car.id().isEmpty() ? List.of() : new CarSheets(books).history(car.id()),
                alike);
    }

    private static Map<String, String> values(Car car, @Nullable Customer owner) {
        Map<String, String> values = new HashMap<>();
        values.put("version", String.valueOf(car.version()));
        values.put("plate", car.plate());
        values.put("vin", car.vin());
        values.put("make", car.make());
        values.put("model", car.model());
        values.put("built", car.built());
        values.put("unit", car.distanceUnit());
        values.put("key", car.lockingKey());
        values.put("note", car.note());
        if (owner != null) {
            values.put("owner-id", owner.id());
            values.put("owner-version", String.valueOf(owner.version()));
            values.put("owner", owner.name());
            values.put("phone", owner.phone());
            values.put("email", owner.email());
            values.put("address", owner.address());
        }
        return values;
    }

    private void save(Context context) {
        Form form = Form.of(context);
        Car car = new Car(
                form.text("id"),
                form.text("owner-id"),
                form.text("plate"),
                form.text("vin"),
                form.text("make"),
                form.text("model"),
                form.text("built"),
                form.oneOf("unit", Set.of("km", "mi"), "km"),
                form.text("key"),
                form.text("note"),
                form.number("version"));
        List<Car> alike = car.id().isEmpty() && form.text("another").isEmpty()
                ? new Cars(books).withPlate(car.plate())
                : List.of();
        String fault = fault(form, car, alike);
        if (!fault.isEmpty()) {
            context.status(422);
            show(context, view(car, form.values(), fault, alike));
            return;
        }
        Customer owner = new Customer(
                car.customer(),
                form.text("owner"),
                form.text("phone"),
                form.text("email"),
                form.text("address"),
                "",
                form.number("owner-version"));
        Saved<Car> saved = books.write(change -> {
            String customer = "";
            if (!owner.name().isEmpty()) {
                Saved<Customer> kept = new Customers(books).save(change, owner);
                customer = kept instanceof Saved.Done<Customer> done
                        ? done.value().id()
                        : kept instanceof Saved.Overtaken<Customer> ? "" : car.customer();
                if (kept instanceof Saved.Overtaken<Customer>) {
                    return new Saved.Overtaken<>(car);
                }
            }
            return new Cars(books).save(change, car.of(customer));
        });
        if (saved instanceof Saved.Done<Car> done) {
            context.redirect("/car/" + done.value().id(), HttpStatus.SEE_OTHER);
        } else {
            replies.overtaken(context, "/car/" + car.id(), form);
        }
    }

    private String fault(Form form, Car car, List<Car> alike) {
        if (!form.fault().isEmpty()) {
            return form.fault();
        }
        if (car.called().equals("car without a plate")) {
            return "Give a plate, or make and model: it has to be found again.";
        }
        Parsed<Built> built = Built.read(car.built(), LocalDate.now(books.clock()));
        if (!car.built().isEmpty() && built instanceof Parsed.Refused) {
            return "Not kept yet: " + built.refusal() + ".";
        }
        return alike.isEmpty() ? "" : "A car with this plate is in the books already.";
    }

    private void openJob(Context context) {
        String id = context.pathParam("id");
        Form form = Form.of(context);
        Car car = new Cars(books).find(id).orElse(null);
        if (car == null) {
            replies.missing(context, "car", id);
            return;
        }
        String comeback = form.text("comeback");
        if (!comeback.isEmpty() && new Jobs(books).find(comeback).isEmpty()) {
            replies.missing(context, "job", Shown.text(comeback));
            return;
        }
        Job cause = new Jobs(books).find(comeback).orElse(null);
        Parsed<Arrival> read = cause == null || cause.stage() == Stage.HANDED_OVER
                ? ArrivalForm.read(form)
                : new Parsed.Refused<>("job " + cause.number() + " is "
                        + cause.stage().words() + ": only a job that was handed over can come back");
        if (!(read instanceof Parsed.Value<Arrival> arrival)) {
            Map<String, String> values = new HashMap<>(form.values());
            Customer owner = new Customers(books).find(car.customer()).orElse(null);
            values.putAll(values(car, owner));
            context.status(422);
            String why = read.refusal();
            show(context, view(car, values, "Not kept yet: " + why + ".", List.of()));
            return;
        }
        Scope scope = new Scope(
                "car", form.text("renew"), form.oneOf("side", Set.of("left", "right", "both"), "both"), "", "");
        Job job = books.write(change -> {
            Job opened = new Jobs(books).open(change, id, arrival.value(), comeback, form.who());
            if (!form.text("renew").isEmpty()) {
                new Jobs(books).save(change, opened.with(scope));
            }
            return opened;
        });
        context.redirect("/job/" + job.id(), HttpStatus.SEE_OTHER);
    }
}
