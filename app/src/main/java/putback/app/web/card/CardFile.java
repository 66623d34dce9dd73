package putback.app.web.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.plan.Plan;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.CarSheet;
import putback.store.books.CarSheets;
import putback.store.books.Cars;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Scope;
import putback.store.overlay.Overlay;
import putback.store.overlay.OverlayRead;
import putback.store.sheets.Fault;
import putback.store.sheets.Read;

/**
 * A car with its own sheet, and the work for which its card is filled in.
 *
 * @param job null where the card belongs to none
 * @param seen number of the sheet that this was read from; 0 for none
 * @param overlay its own sheet; null as long as it is built on nothing
 * @param question what is to be renewed; its sheet is the car's own
 */
record CardFile(
        Car car, @Nullable Job job, int seen, @Nullable Overlay overlay, Question question) {
    /**
     * Reads what an address or a form says. Null when there is no such car.
     *
     * @param asked every value by name: {@code job}, or {@code renew}, {@code side} and {@code base}
     */
    static @Nullable CardFile open(Books books, String id, Map<String, List<String>> asked) {
        Car car = new Cars(books).find(id).orElse(null);
        if (car == null) {
            return null;
        }
        Job job = new Jobs(books)
                .find(first(asked, "job"))
                .filter(one -> one.car().equals(id))
                .orElse(null);
        Scope scope = job == null ? null : job.scope();
        Question question = question(id, asked, asked.containsKey("renew") ? null : scope);
        CarSheet own = new CarSheets(books).current(id).orElse(null);
        if (own != null) {
            return new CardFile(car, job, own.number(), overlay(own), question);
        }
        List<String> bases = new ArrayList<>(every(asked, "base"));
        if (bases.isEmpty() && scope != null && scope.named() && !scope.sheet().equals("car")) {
            bases.add(scope.sheet());
        }
        Overlay fresh = bases.isEmpty() ? null : Nearest.joined(Shelf.OF_CAR + id, car.called(), bases);
        return new CardFile(car, job, 0, fresh, question);
    }

    private static Question question(String id, Map<String, List<String>> asked, @Nullable Scope scope) {
        return scope == null
                ? Question.of(Shelf.OF_CAR + id, every(asked, "renew"), first(asked, "side"))
                : Question.of(Shelf.OF_CAR + id, List.of(scope.renew()), scope.side());
    }

    static @Nullable Overlay overlay(CarSheet sheet) {
        return Overlay.read(Shelf.OF_CAR + sheet.car(), sheet.text()) instanceof OverlayRead.Sound sound
                ? sound.overlay()
                : null;
    }

    private static List<String> every(Map<String, List<String>> asked, String name) {
        List<String> all = new ArrayList<>();
        for (String value : asked.getOrDefault(name, List.of())) {
            if (!value.isBlank()) {
                all.add(value);
            }
        }
        return all;
    }

    private static String first(Map<String, List<String>> asked, String name) {
        List<String> all = every(asked, name);
        return all.isEmpty() ? "" : all.get(0);
    }

    /** The plan, or why there is none. */
    Answer answer(Overlay overlay, Shelf shelf) {
        Read read = shelf.text(question.sheet(), overlay.write());
        return read instanceof Read.Faulty faulty
                ? new Answer.Refused(
                        422,
                        "This sheet cannot be used",
                        faulty.faults().stream().map(Fault::toString).toList())
                : Answer.to(question, (Read.Sheet) read);
    }

    /** The same with another sheet read. */
    CardFile at(int number, Overlay other) {
        return new CardFile(car, job, number, other, question);
    }

    /** The address of its card. */
    String address() {
        StringBuilder address = new StringBuilder(question.address("/car/" + car.id() + "/card"));
        Overlay own = overlay;
        if (seen == 0 && own != null) {
            for (String base : own.bases()) {
                address.append("&base=").append(base);
            }
        }
        return address.append(job == null ? "" : "&job=" + job.id()).toString();
    }

    static Plan plan(Answer answer) {
        return ((Answer.Planned) answer).plan();
    }
}
