package putback.app.web.card;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Question;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.CarSheet;
import putback.store.books.CarSheets;
import putback.store.books.Cars;
import putback.store.books.Saved;
import putback.store.overlay.Overlay;
import putback.store.sheets.Fault;
import putback.store.sheets.Read;

/** A new car, from its plate to its card: the nearest sheet, a few questions, what is renewed. */
final class NewCarPages implements PageGroup {
    private final Replies replies;
    private final Books books;
    private final Shelf shelf;

    NewCarPages(Replies replies, Books books, Shelf shelf) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/new-car", context -> show(context, Map.of("side", "both"), Set.of(), ""));
        routes.post("/new-car", this::keep);
    }

    private void show(Context context, Map<String, String> values, Set<String> ticked, String fault) {
        replies.show(context, "new-car.jte", new NewCarView(Nearest.all(books, shelf), values, ticked, fault));
    }

    private void keep(Context context) {
        Form form = Form.of(context);
        List<Nearest> sheets = Nearest.all(books, shelf);
        int chosen = form.number("sheet");
        Nearest nearest = sheets.get(Math.min(chosen, sheets.size() - 1));
        List<String> renew = context.formParams("renew." + chosen);
        String fault = fault(form, renew);
        Car car = new Car("", "", form.text("plate"), "", form.text("make"), form.text("model"), "", "km", "", "", 0);
        Overlay overlay = answered(Nearest.joined(Shelf.OF_CAR + "new", car.called(), nearest.bases()), nearest, form);
        List<String> there = there(overlay, renew);
        if (fault.isEmpty() && there.isEmpty()) {
            fault = "What is ticked does not exist on a car as answered; tick something else.";
        }
        if (!fault.isEmpty()) {
            context.status(422);
            show(context, form.values(), ticked(chosen, renew), fault);
            return;
        }
        Saved<Car> saved = books.write(change -> {
            Saved<Car> kept = new Cars(books).save(change, car);
            if (kept instanceof Saved.Done<Car> done) {
                String id = done.value().id();
                Overlay own = overlay.named(Shelf.OF_CAR + id, car.called());
                Saved<CarSheet> sheet =
                        new CarSheets(books).add(change, id, 0, own.write(), form.who(), "answers about a new car");
                return sheet instanceof Saved.Done ? kept : new Saved.Gone<>();
            }
            return kept;
        });
        if (saved instanceof Saved.Done<Car> done) {
            String id = done.value().id();
            Question question = Question.of(Shelf.OF_CAR + id, there, form.text("side." + chosen));
            context.redirect(question.address("/car/" + id + "/card"), HttpStatus.SEE_OTHER);
        } else {
            show(context, form.values(), ticked(chosen, renew), "The car could not be kept. Maybe try again.");
        }
    }

    private static String fault(Form form, List<String> renew) {
        if (!form.fault().isEmpty()) {
            return form.fault();
        }
        if (form.text("plate").isEmpty()
                && form.text("make").isEmpty()
                && form.text("model").isEmpty()) {
            return "Give a plate, or make and model: it has to be found again.";
        }
        return renew.isEmpty() ? "Tick at least one part or unit that is to be renewed." : "";
    }

    private static Set<String> ticked(int sheet, List<String> renew) {
        Set<String> ticked = new TreeSet<>();
        renew.forEach(part -> ticked.add(sheet + " " + part));
        return ticked;
    }

    private static Overlay answered(Overlay fresh, Nearest nearest, Form form) {
        Overlay overlay = fresh;
        for (var question : nearest.questions()) {
            overlay = overlay.answered(question, form.text("q." + form.number("sheet") + "." + question.id()));
        }
        return overlay;
    }

    /** What of the ticked there is once the questions are answered. */
    private List<String> there(Overlay overlay, List<String> renew) {
        Read read = shelf.text("new", overlay.write());
        if (read instanceof Read.Faulty faulty) {
            throw new IllegalStateException("answers that make no car: "
                    + faulty.faults().stream().map(Fault::toString).toList());
        }
        Set<String> known = new TreeSet<>();
        var assembly = ((Read.Sheet) read).assembly();
        assembly.parts().forEach(part -> known.add(part.entry().id()));
        assembly.units().forEach(unit -> known.add(unit.entry().id()));
        List<String> there = new ArrayList<>(renew);
        there.retainAll(known);
        return there;
    }
}
