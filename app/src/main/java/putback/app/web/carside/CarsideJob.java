package putback.app.web.carside;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.labour.price.OwnFigures;
import putback.ledger.Event;
import putback.ledger.onward.Onward;
import putback.plan.Plan;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Events;
import putback.store.books.Job;
import putback.store.books.Jobs;

/**
 * A job as it stands at the car.
 *
 * @param car null where it is not in the books any more
 * @param onward the plan in the order in which it is really done, and what was done of it
 * @param last number of the last event
 * @param scoped who said last what it renews, and when; null where nobody changed it since it was opened
 * @param seen what the garage has seen on cars like it
 */
record CarsideJob(Job job, @Nullable Car car, Onward onward, int last, Audit.@Nullable Entry scoped, OwnFigures seen) {
    /** What came of looking for it. */
    sealed interface Found {
        record Here(CarsideJob job) implements Found {}

        record Not(Answer.Refused because) implements Found {}
    }

    static Found find(Books books, Events events, Shelf shelf, String id) {
        Optional<Job> job = new Jobs(books).find(id);
        if (job.isEmpty()) {
            return new Found.Not(
                    new Answer.Refused(404, "No such job", List.of("There is no job at this address. Was it typed?")));
        }
        if (!job.get().scope().named()) {
            return new Found.Not(new Answer.Refused(
                    409,
                    "Nothing to do yet",
                    List.of("Job " + job.get().number() + " does not say what is to be renewed. Say it on its page.")));
        }
        Question question = question(job.get());
        Answer answer = Answer.to(question, shelf);
        if (answer instanceof Answer.Refused refused) {
            return new Found.Not(refused);
        }
        Plan plan = ((Answer.Planned) answer).plan();
        List<Event> done = events.all(id);
        Car car = new Cars(books).find(job.get().car()).orElse(null);
        return new Found.Here(new CarsideJob(
                job.get(), car, Onward.of(plan, done), done.size(), scoped(books, id), shelf.seen(question.sheet())));
    }

    private static Audit.@Nullable Entry scoped(Books books, String id) {
        Audit.Entry last = null;
        for (Audit.Entry entry : new Audit(books).of(id)) {
            last = entry.what().equals("scope") ? entry : last;
        }
        return last;
    }

    private static Question question(Job job) {
        String sheet = job.scope().sheet().equals("car")
                ? Shelf.OF_CAR + job.car()
                : job.scope().sheet();
        return Question.of(sheet, List.of(job.scope().renew()), job.scope().side());
    }

    Plan plan() {
        return onward.plan();
    }

    /** As people call the car: plate, make and model. */
    String carName() {
        return car == null
                ? ""
                : String.join(" ", List.of(car.plate(), car.make(), car.model()))
                        .strip();
    }
}
