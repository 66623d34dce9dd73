package putback.app.web.job;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.job.Stage;
import putback.store.books.Approval;
import putback.store.books.Approvals;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Customer;
import putback.store.books.Customers;
import putback.store.books.Finding;
import putback.store.books.Findings;
import putback.store.books.Heard;
import putback.store.books.HeardDevices;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.KeptEstimate;
import putback.store.books.KeptEstimates;
import putback.store.books.Move;
import putback.store.books.Moves;
import putback.store.books.PartLine;
import putback.store.books.PartLines;
import putback.store.books.PartPrice;
import putback.store.books.PartPrices;
import putback.store.books.Recheck;
import putback.store.books.Rechecks;
import putback.store.books.RoadTest;
import putback.store.books.RoadTests;

/**
 * A job with all that the books have of it.
 *
 * @param customer null when not known
 * @param paid what the garage paid for parts of this model
 * @param estimates as they were put to the owner
 * @param invoice as it went with the car; null until it is handed over
 * @param cause the job whose work this one is about; null for none
 * @param comebacks jobs about the work of this one
 */
public record JobFile(
        Job job,
        Car car,
        @Nullable Customer customer,
        List<Move> moves,
        List<Approval> approvals,
        List<Finding> findings,
        List<PartLine> parts,
        List<PartPrice> paid,
        List<KeptEstimate> estimates,
        @Nullable KeptEstimate invoice,
        List<Recheck> rechecks,
        List<RoadTest> roadTests,
        List<Audit.Entry> audit,
        List<Heard> devices,
        @Nullable Job cause,
        List<Job> comebacks) {

    /** Null when there is no such job. */
    public static @Nullable JobFile open(Books books, String id) {
        Job job = new Jobs(books).find(id).orElse(null);
        Car car = job == null ? null : new Cars(books).find(job.car()).orElse(null);
        if (job == null || car == null) {
            return null;
        }
        return new JobFile(
                job,
                car,
                new Customers(books).find(car.customer()).orElse(null),
                new Moves(books).of(id),
                new Approvals(books).of(id),
                new Findings(books).of(id),
                new PartLines(books).of(id),
                new PartPrices(books).of(PartPrices.model(car)),
                new KeptEstimates(books).of(id),
                new KeptEstimates(books).invoice(id).orElse(null),
                new Rechecks(books).of(id),
                new RoadTests(books).of(id),
                new Audit(books).of(id),
                new HeardDevices(books).of(id),
                new Jobs(books).find(job.comebackOf()).orElse(null),
                new Jobs(books).comebacksOf(id));
    }

    /** What holds: the last thing somebody said to a price; null as long as nobody has. */
    @Nullable
    Approval answer() {
        return approvals.isEmpty() ? null : approvals.get(approvals.size() - 1);
    }

    /** The last yes, whatever was said after it: no more than that was agreed to; null where there was none. */
    @Nullable
    Approval lastYes() {
        Approval last = null;
        for (Approval said : approvals) {
            last = said.yes() ? said : last;
        }
        return last;
    }

    /** Why work, terms and prices are no longer changed; empty as long as they are. */
    public String closed() {
        return job.stage() == Stage.HANDED_OVER
                ? "the car is handed over and its invoice went with it, so the work, its terms and prices stay as they"
                        + " were; open a new job for what comes after"
                : "";
    }

    /** The same with the job as it will be. */
    JobFile with(Job changed) {
        return new JobFile(
                changed, car, customer, moves, approvals, findings, parts, paid, estimates, invoice, rechecks,
                roadTests, audit, devices, cause, comebacks);
    }

    /** What its parts cost this garage. */
    OwnPrices prices() {
        return new OwnPrices(parts, paid);
    }

    /** The estimate that something was said to; null for none. */
    public @Nullable KeptEstimate estimate(Approval said) {
        for (KeptEstimate kept : estimates) {
            if (kept.id().equals(said.estimate())) {
                return kept;
            }
        }
        return null;
    }

    /** What the car must not be driven with and the owner has not answered yet, in words. */
    List<String> unanswered() {
        List<String> open = new ArrayList<>();
        for (Finding found : findings) {
            if (found.stopsDriving() && found.answer().equals("open")) {
                open.add(found.words());
            }
        }
        return open;
    }

    /** The name of its sheet on the shelf. */
    String sheet() {
        String named = job.scope().sheet();
        return named.equals("car") ? Shelf.OF_CAR + car.id() : named;
    }

    /** What is asked of the planner; null as long as nothing is named. */
    @Nullable
    Question question() {
        return job.scope().named()
                ? Question.of(sheet(), List.of(job.scope().renew()), job.scope().side())
                : null;
    }

    /** Where its plan is shown; the front page as long as nothing is named. */
    public String planAddress() {
        Question question = question();
        return question == null ? "/" : question.address("/plan");
    }

    /**
     * Where its price is shown in full.
     *
     * @param values the terms that hold for it, by name
     */
    String priceAddress(Map<String, String> values) {
        Question question = question();
        if (question == null) {
            return "/";
        }
        StringBuilder address =
                new StringBuilder(question.address("/price")).append("&job=").append(job.id());
        values.forEach(
                (name, value) -> address.append('&').append(name).append('=').append(coded(value)));
        Rust.byPlace(job.scope()).forEach((place, grade) -> address.append("&rust")
                .append(place.isEmpty() ? "" : "." + coded(place))
                .append('=')
                .append(coded(grade)));
        return address.toString();
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
