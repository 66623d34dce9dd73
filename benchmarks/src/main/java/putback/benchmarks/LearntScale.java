package putback.benchmarks;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import putback.app.demo.BigGarage;
import putback.app.learning.Learning;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.job.Stage;
import putback.labour.price.Beliefs;
import putback.labour.price.Estimating;
import putback.labour.price.OwnFigures;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrade;
import putback.labour.seized.RustGrades;
import putback.plan.Plan;
import putback.plan.steps.Step;
import putback.store.books.Books;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Scope;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;

/** What learning costs in books of 2,000 cars and 10,000 jobs, each with a ledger of its whole plan. See docs/scale.md. */
public final class LearntScale {
    private static final int CARS = 2000;
    private static final int JOBS = 10_000;
    private static final int AT_ONCE = 100;

    private final Books books;
    private final Shelf shelf;
    private final Random random = new Random(7);
    private final Map<Scope, Plan> plans = new HashMap<>();
    private int events;

    private LearntScale(Books books) {
        this.books = books;
        shelf = new Shelf(books);
    }

    /** Prints its figures; the folder given must be on the disk that is asked about. */
    public static void main(String[] words) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(words.length > 0 ? words[0] : "."), "learnt");
        try (Database database = SqliteDatabase.open(folder.resolve("garage.db"))) {
            new LearntScale(new Books(database, "g1", Clock.systemUTC())).run();
        } finally {
            delete(folder);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private void run() {
        BigGarage.fill(books, CARS, JOBS, 7);
        List<Job> done = new Jobs(books).at(Stage.HANDED_OVER, JOBS);
        for (int from = 0; from < done.size(); from += AT_ONCE) {
            List<Job> some = done.subList(from, Math.min(done.size(), from + AT_ONCE));
            books.write(change -> {
                some.forEach(job -> ledger(job, change.handle()::execute));
                return some;
            });
        }
        System.out.printf(Locale.ROOT, "%d finished jobs, %d events%n", done.size(), events);
        Learning learning = new Learning(books, shelf);
        long start = System.nanoTime();
        int lessons = learning.all().size();
        say("learning from all of them, once: a job", start, done.size());
        System.out.printf(Locale.ROOT, "%d lessons%n", lessons);
        for (int round = 0; round < 3; round++) {
            round(learning, done.get(round));
        }
    }

    private void round(Learning learning, Job job) {
        long start = System.nanoTime();
        learning.learn(job.id());
        say("learning from one job, as at its handover", start, 1);
        start = System.nanoTime();
        OwnFigures own = learning.seen("front-strut");
        say("the first price after that: its own figures", start, 1);
        start = System.nanoTime();
        learning.seen("front-strut");
        say("each further price: its own figures", start, 1);
        Plan plan = plan(new Scope("front-strut", "strut", "both", "", "2"));
        start = System.nanoTime();
        estimate(plan, OwnFigures.NONE);
        say("an estimate from assumptions", start, 1);
        start = System.nanoTime();
        estimate(plan, own);
        say("an estimate from own figures", start, 1);
    }

    private static void estimate(Plan plan, OwnFigures own) {
        List<putback.labour.price.Job> jobs = List.of(new putback.labour.price.Job("strut", plan.wanted()));
        Estimating.of(
                plan, jobs, new Beliefs(RustGrades.all(RustGrade.SCALED), own), Terms.of(new BigDecimal("60")), 1);
    }

    private static void say(String what, long start, int times) {
        System.out.printf(Locale.ROOT, "%-46s %10.2f ms%n", what, (System.nanoTime() - start) / 1e6 / times);
    }

    private Plan plan(Scope scope) {
        return plans.computeIfAbsent(scope, unknown -> {
            Question question = Question.of(scope.sheet(), List.of(scope.renew()), scope.side());
            return ((Answer.Planned) Answer.to(question, shelf)).plan();
        });
    }

    /** Takes a statement with its values. */
    private interface Inserting {
        int execute(CharSequence sql, Object... values);
    }

    private void ledger(Job job, Inserting inserting) {
        List<String> bodies = new ArrayList<>();
        Instant at = Instant.parse("2026-03-02T09:00:00Z");
        for (Step step : plan(job.scope()).steps()) {
            double minutes = 0.2 + step.minutes().decimal().doubleValue() * (0.6 + random.nextDouble());
            at = at.plusMillis((long) (minutes * 60_000));
            String joint =
                    step.joint() == null ? "" : ",\"joint\":\"" + step.joint().id() + "\"";
            String part =
                    step.part() == null ? "" : ",\"part\":\"" + step.part().id() + "\"";
            bodies.add("\"at\":\"" + at + "\",\"by\":\"Mara\",\"device\":\"tab\",\"do\":\""
                    + step.act().word() + "\"" + joint + part
                    + (step.followUp() == null ? "" : ",\"followUp\":\"angles\""));
        }
        int number = 0;
        for (String body : bodies) {
            number++;
            String id = "e-" + events++;
            inserting.execute(
                    "insert into event (job, number, id, device, seq, body, hash, received_at)"
                            + " values (?, ?, ?, 'tab', ?, ?, 'none', '2026-03-02T09:00:00.000Z')",
                    job.id(),
                    number,
                    id,
                    number,
                    "{\"id\":\"" + id + "\",\"seq\":" + number + "," + body + "}");
        }
    }
}
