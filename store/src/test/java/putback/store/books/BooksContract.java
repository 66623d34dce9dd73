package putback.store.books;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import putback.job.Stage;
import putback.store.database.Database;
import putback.store.database.StoreFailure;

/** What the books promise, whichever database they lie in. */
abstract class BooksContract {
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC);
    private static final Arrival ARRIVAL =
            new Arrival("knocks over bumps", "cold, slow, left front", "128400", "", Heights.NONE, "");

    private Database database;
    private Books books;

    abstract Database open();

    @BeforeEach
    void openBooks() {
        database = open();
        books = new Books(database, "g1", NOON);
    }

    @AfterEach
    void closeBooks() {
        database.close();
    }

    private Car car(String plate) {
        Car car = new Car("", "", plate, "", "Tamsel", "Dory", "2014", "km", "", "", 0);
        return done(books.write(change -> new Cars(books).save(change, car)));
    }

    private Job job() {
        Car car = car("WH 12");
        return books.write(change -> new Jobs(books).open(change, car.id(), ARRIVAL, "", "Mara"));
    }

    private static <T> T done(Saved<T> saved) {
        assertThat(saved).isInstanceOf(Saved.Done.class);
        return ((Saved.Done<T>) saved).value();
    }

    @Test
    void whatIsSaved_isReadAgain() {
        Customer asked = new Customer("", "Orla Quent", "0555 12", "o@example.org", "Quay 3", "calls after five", 0);
        Customer kept = done(books.write(change -> new Customers(books).save(change, asked)));
        assertThat(new Customers(books).find(kept.id())).contains(kept);
        Car car =
                new Car("", kept.id(), "WH 77", "1G4AH59H45G118341", "Tamsel", "Dory", "2014", "mi", "glovebox", "", 0);
        Car keptCar = done(books.write(change -> new Cars(books).save(change, car)));
        assertThat(new Cars(books).find(keptCar.id())).contains(keptCar);
        assertThat(new Cars(books).ofCustomer(kept.id())).containsExactly(keptCar);
    }

    @Test
    void aSecondHand_neverSilentlyOverwritesTheFirst() {
        Job read = job();
        Scope one = new Scope("front-strut", "strut", "left", "", "");
        Scope other = new Scope("front-brake", "pads", "both", "", "");
        Job first = done(books.write(change -> new Jobs(books).save(change, read.with(one))));
        Saved<Job> second = books.write(change -> new Jobs(books).save(change, read.with(other)));
        assertThat(second).isEqualTo(new Saved.Overtaken<>(first));
        assertThat(new Jobs(books).find(read.id()).orElseThrow().scope()).isEqualTo(one);
    }

    @Test
    void manyHandsAtOnce_leaveOneWinnerEachRound() throws Exception {
        Job read = job();
        ExecutorService hands = Executors.newFixedThreadPool(6);
        try {
            List<Future<Saved<Job>>> all = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                Scope scope = new Scope("front-strut", "part-" + i, "left", "", "");
                Callable<Saved<Job>> hand = () -> books.write(change -> new Jobs(books).save(change, read.with(scope)));
                all.add(hands.submit(hand));
            }
            int won = 0;
            for (Future<Saved<Job>> one : all) {
                won += one.get() instanceof Saved.Done ? 1 : 0;
            }
            assertThat(won).isEqualTo(1);
        } finally {
            hands.shutdownNow();
        }
    }

    @Test
    void numbers_followOneAnotherWhoeverAsks() throws Exception {
        Car car = car("WH 12");
        ExecutorService hands = Executors.newFixedThreadPool(4);
        try {
            List<Future<Job>> all = new ArrayList<>();
            for (int i = 0; i < 20; i++) {
                Callable<Job> hand =
                        () -> books.write(change -> new Jobs(books).open(change, car.id(), ARRIVAL, "", "Mara"));
                all.add(hands.submit(hand));
            }
            Set<String> numbers = new HashSet<>();
            for (Future<Job> one : all) {
                numbers.add(one.get().number());
            }
            assertThat(numbers).hasSize(20).contains("2026-0001", "2026-0020");
        } finally {
            hands.shutdownNow();
        }
    }

    @Test
    void aJobsCourse_isKeptWithWhoAndWhen() {
        Job job = job();
        Job moved = done(
                books.write(change -> new Jobs(books).move(change, job, Stage.LOOKED_OVER, "Teo", "rust grade 3")));
        assertThat(moved.stage()).isEqualTo(Stage.LOOKED_OVER);
        assertThat(new Moves(books).of(job.id()))
                .containsExactly(
                        new Move(1, Stage.ASKED, "2026-03-02T12:00:00.000Z", "Mara", ""),
                        new Move(2, Stage.LOOKED_OVER, "2026-03-02T12:00:00.000Z", "Teo", "rust grade 3"));
    }

    @Test
    void whatWasSaidAndDone_cannotBeAlteredEvenByAStatement() {
        Job job = job();
        Approval said = new Approval("", job.id(), "Orla", "phone", "", true, "420.00", "388.10", "go on", "Mara", "");
        Approval kept = books.write(change -> new Approvals(books).add(change, said));
        assertThat(new Approvals(books).of(job.id())).containsExactly(kept);
        for (String statement : List.of("update approval set up_to = '9999'", "delete from approval")) {
            assertThatThrownBy(() -> books.write(change -> change.handle().execute(statement)))
                    .isInstanceOf(StoreFailure.class)
                    .hasMessageContaining("rows are only added");
        }
    }

    @Test
    void aChangeThatFails_leavesNothing() {
        assertThatThrownBy(() -> books.write(change -> {
                    new Customers(books).save(change, new Customer("", "Half Done", "", "", "", "", 0));
                    throw new IllegalArgumentException("stop");
                }))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new Customers(books).search("half", 10)).isEmpty();
    }

    @Test
    void search_findsAllWordsWithoutAccentsAndTakesNoStatements() {
        Customer asked = new Customer("", "Zoë O'Hara", "0555-99 12", "", "", "", 0);
        Customer kept = done(books.write(change -> new Customers(books).save(change, asked)));
        Customers customers = new Customers(books);
        assertThat(customers.search("ZOE hara", 10)).containsExactly(kept);
        assertThat(customers.search("05559912", 10)).containsExactly(kept);
        assertThat(customers.search("zoe smith", 10)).isEmpty();
        assertThat(customers.search("'; drop table customer; --", 10)).isEmpty();
        assertThat(customers.search("%", 10)).containsExactly(kept);
        car("WH-12 K");
        assertThat(new Cars(books).search("wh12k", 10)).hasSize(1);
        assertThat(new Cars(books).search("wh 12 dory", 10)).hasSize(1);
    }

    @Test
    void anotherGarage_seesNothing() {
        Job job = job();
        Books others = new Books(database, "g2", NOON);
        assertThat(new Jobs(others).find(job.id())).isEmpty();
        assertThat(new Cars(others).search("", 10)).isEmpty();
        assertThat(new Jobs(others).search("knocks", 10)).isEmpty();
        assertThat(new Jobs(books).search("knocks wh 12", 10)).containsExactly(job);
    }

    @Test
    void aCarsSheet_keepsItsHistory() {
        Car car = car("WH 12");
        CarSheets sheets = new CarSheets(books);
        done(books.write(change -> sheets.add(change, car.id(), 0, "one", "Mara", "first")));
        CarSheet second = done(books.write(change -> sheets.add(change, car.id(), 1, "two", "Mara", "torques")));
        assertThat(books.<Saved<CarSheet>>write(change -> sheets.add(change, car.id(), 1, "other", "Teo", "late")))
                .isEqualTo(new Saved.Overtaken<>(second));
        assertThat(sheets.current(car.id())).contains(second);
        assertThat(sheets.history(car.id())).extracting(CarSheet::text).containsExactly("two", "one");
    }

    @Test
    void findingsAnswers_partsAndRechecks_areKept() {
        Job job = job();
        Finding found = books.write(change -> new Findings(books)
                .add(change, Finding.seen(job.id(), "left rear", "hose cracked", "soon", "38.00", "Teo")));
        done(books.write(change -> new Findings(books).answer(change, found, "declined", "next year", "Teo")));
        assertThat(new Findings(books).of(job.id())).extracting(Finding::said).containsExactly("next year");
        PartLine line = books.write(change -> new PartLines(books)
                .add(
                        change,
                        PartLine.wanted(job.id(), "left.spring", "Spring", 2).priced("44.50", "Mara")));
        PartLine arrived = line.at("Quay Parts", "arrived", "Teo");
        done(books.write(change -> new PartLines(books).save(change, arrived)));
        assertThat(new PartLines(books).of(job.id())).containsExactly(arrived.at(2));
        Recheck due =
                books.write(change -> new Rechecks(books).add(change, job.id(), "2026-03-09", "128450", "wheel nuts"));
        assertThat(new Rechecks(books).due("2026-03-08", 10)).isEmpty();
        assertThat(new Rechecks(books).due("2026-03-09", 10)).containsExactly(due);
        done(books.write(change -> new Rechecks(books).done(change, due, "128460", "Mara", "110 N·m, none moved")));
        assertThat(new Rechecks(books).due("2026-03-09", 10)).isEmpty();
    }

    @Test
    void whoListens_hearsOfAChangeOnceItIsKept() {
        List<String> heard = new ArrayList<>();
        Runnable end = database.changes().listen(heard::add);
        Job job = job();
        books.write(change -> new Jobs(books).move(change, job, Stage.PRICED, "Mara", ""));
        end.run();
        assertThat(heard).contains("job:" + job.id());
    }

    @Test
    void soundBooks_areWhole() {
        job();
        assertThat(database.soundness().faults()).isEmpty();
    }

    @Test
    void aKeptSheet_isThereForEveryCar_andNeverAltered() {
        KeptSheets kept = new KeptSheets(books);
        KeptSheet dory = done(books.write(change -> kept.add(change, "dory", "Tamsel Dory", "sheet: dory", "Mara")));
        assertThat(kept.all()).containsExactly(dory);
        assertThat(kept.text("dory")).isEqualTo("sheet: dory");
        assertThat(kept.text("other")).isNull();
        Saved<KeptSheet> again = books.write(change -> kept.add(change, "dory", "Other", "sheet: x", "Teo"));
        assertThat(again).isEqualTo(new Saved.Overtaken<>(dory));
        assertThat(new KeptSheets(new Books(database, "g2", NOON)).all()).isEmpty();
    }

    private static KeptEstimate put(String job, String total) {
        return new KeptEstimate(
                "",
                job,
                0,
                "",
                "Mara",
                "Rear damper, left",
                total,
                "372.10",
                "372.10",
                "cr",
                List.of("2 x Damper bolt"),
                List.of(
                        new KeptEstimate.Line("Labour: Rear damper, left", "71", "min", "73.36"),
                        new KeptEstimate.Line("Rear damper, left", "1", "each", "64.00")));
    }

    @Test
    void anEstimateThatWasPutToTheOwner_staysAsItWas_andTheYesPointsToIt() {
        Job job = job();
        KeptEstimates estimates = new KeptEstimates(books);
        KeptEstimate first = books.write(change -> estimates.keep(change, put(job.id(), "334.26")));
        assertThat(books.<KeptEstimate>write(change -> estimates.keep(change, put(job.id(), "334.26"))))
                .isEqualTo(first);
        KeptEstimate second = books.write(change -> estimates.keep(change, put(job.id(), "351.00")));
        assertThat(estimates.of(job.id())).containsExactly(first, second);
        assertThat(second.number()).isEqualTo(2);
        Approval said = new Approval("", job.id(), "Orla", "here", "", true, "372.10", "", "", "Mara", first.id());
        books.write(change -> new Approvals(books).add(change, said));
        assertThat(new Approvals(books).of(job.id()))
                .extracting(Approval::estimate)
                .containsExactly(first.id());
        for (String statement : List.of("update estimate set asked = '1'", "delete from estimate_line")) {
            assertThatThrownBy(() -> books.write(change -> change.handle().execute(statement)))
                    .isInstanceOf(StoreFailure.class)
                    .hasMessageContaining("rows are only added");
        }
    }

    @Test
    void theInvoiceOfAJob_isKeptOnce_besideItsEstimatesAndNotAmongThem() {
        Job job = job();
        KeptEstimates estimates = new KeptEstimates(books);
        assertThat(estimates.invoice(job.id())).isEmpty();
        KeptEstimate put = books.write(change -> estimates.keep(change, put(job.id(), "334.26")));
        KeptEstimate invoice = books.write(change -> estimates.keepInvoice(change, put(job.id(), "340.00")));
        assertThat(estimates.invoice(job.id())).contains(invoice);
        assertThat(estimates.of(job.id())).containsExactly(put);
        assertThat(books.<KeptEstimate>write(change -> estimates.keep(change, put(job.id(), "351.00")))
                        .number())
                .isEqualTo(2);
        assertThatThrownBy(() -> books.write(change -> estimates.keepInvoice(change, put(job.id(), "1.00"))))
                .isInstanceOf(StoreFailure.class);
    }

    @Test
    void aPriceThatTheGarageGave_isThereForTheNextCarOfTheModel_whicheverSide() {
        Car one = car("WH 12");
        Car other = car("WH 13");
        PartPrices prices = new PartPrices(books);
        String model = PartPrices.model(one);
        String spring = PartPrices.part("left.spring", "Rear spring, left");
        books.write(change -> {
            prices.keep(change, new PartPrice(model, spring, false, "Rear spring", 1, "41.00", "Mara"));
            prices.keep(change, new PartPrice(model, spring, false, "Rear spring", 1, "44.50", "Teo"));
            prices.keep(
                    change, new PartPrice(model, PartPrices.own("Brake fluid"), true, "Brake fluid", 1, "6", "Teo"));
            return model;
        });
        assertThat(prices.of(PartPrices.model(other)))
                .extracting(PartPrice::name, PartPrice::price, PartPrice::own)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("Brake fluid", "6", true),
                        org.assertj.core.groups.Tuple.tuple("Rear spring", "44.50", false));
        assertThat(PartPrices.part("right.spring", "Rear spring, right")).isEqualTo(spring);
        assertThat(PartPrices.part("left.spring", "Rear spring, both sides")).isEqualTo(spring);
        assertThat(new PartPrices(new Books(database, "g2", NOON)).of(model)).isEmpty();
    }
}
