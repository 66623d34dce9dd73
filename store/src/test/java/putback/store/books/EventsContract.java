package putback.store.books;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.chain.Merged;
import putback.ledger.chain.Verdict;
import putback.store.database.Database;
import putback.store.database.StoreFailure;

/** What the book of events promises, whichever database it lies in. */
abstract class EventsContract {
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC);

    private Database database;
    private Books books;
    private Events events;

    abstract Database open();

    /** Lets a statement alter what is only added to, as a person at the file could. */
    abstract void unlock(Database database);

    @BeforeEach
    void openBooks() {
        database = open();
        books = new Books(database, "g1", NOON);
        events = new Events(books);
    }

    @AfterEach
    void closeBooks() {
        database.close();
    }

    private String job() {
        Car car = new Car("", "", "WH 12", "", "Tamsel", "Dory", "2014", "km", "", "", 0);
        return books.write(change -> {
            Saved<Car> saved = new Cars(books).save(change, car);
            String id = ((Saved.Done<Car>) saved).value().id();
            Arrival arrival = new Arrival("knocks", "", "", "", Heights.NONE, "");
            return new Jobs(books).open(change, id, arrival, "", "Mara").id();
        });
    }

    private Merged append(String job, Event... batch) {
        Received received = events.append(job, List.of(batch));
        assertThat(received).isInstanceOf(Received.Kept.class);
        return ((Received.Kept) received).merged();
    }

    @Test
    void whatWasAppended_isReadAgainAsItWas() {
        String job = job();
        Event undo = Doing.of("tab", 1, Did.UNDO, "left.strut");
        Event note = Doing.note("tab", 2, "line\none, \"two\" \\ Ω");
        Event tight = Doing.of("tab", 3, Did.TIGHTEN, "left.strut");
        append(job, undo, note, tight);
        assertThat(events.all(job)).containsExactly(undo, note, tight);
        assertThat(new Events(books).since(job, 2)).extracting(KeptEvent::id).containsExactly("tab-3");
        assertThat(events.since(job, 0)).allMatch(kept -> kept.receivedAt().equals("2026-03-02T12:00:00.000Z"));
    }

    @Test
    void theSameAgain_isHarmless_andTheWrongOrderIsPutRight() {
        String job = job();
        Event one = Doing.of("tab", 1, Did.UNDO, "a");
        Event two = Doing.of("tab", 2, Did.START, "a");
        Event three = Doing.of("tab", 3, Did.TIGHTEN, "a");
        assertThat(append(job, three, one).waiting()).containsExactly(three);
        assertThat(append(job, three, two, one, two).appended()).containsExactly(two, three);
        assertThat(append(job, one, two, three).known()).hasSize(3);
        assertThat(events.all(job)).containsExactly(one, two, three);
    }

    @Test
    void anotherEventUnderTheSameId_isRefused_andTheRestIsKept() {
        String job = job();
        append(job, Doing.of("tab", 1, Did.UNDO, "a"));
        Merged merged = append(job, Doing.of("tab", 1, Did.UNDO, "b"), Doing.of("tab", 2, Did.START, "a"));
        assertThat(merged.refused()).hasSize(1);
        assertThat(merged.appended()).hasSize(1);
    }

    @Test
    void aJobThatIsNotThere_takesNothing() {
        assertThat(events.append("none", List.of(Doing.of("tab", 1, Did.UNDO, "a"))))
                .isEqualTo(new Received.NoSuchJob());
        String job = job();
        append(job, Doing.of("tab", 1, Did.UNDO, "a"));
        Events others = new Events(new Books(database, "g2", NOON));
        assertThat(others.append(job, List.of(Doing.of("t", 1, Did.UNDO, "a")))).isEqualTo(new Received.NoSuchJob());
        assertThat(others.since(job, 0)).isEmpty();
    }

    @Test
    void anotherProgramOnTheSameBooks_goesOnWhereThisOneEnded() {
        String job = job();
        append(job, Doing.of("tab", 1, Did.UNDO, "a"));
        new Events(books).append(job, List.of(Doing.of("phone", 1, Did.UNDO, "b")));
        append(job, Doing.of("tab", 2, Did.START, "a"));
        assertThat(events.verifyChain(job)).isInstanceOf(Verdict.Whole.class);
        assertThat(events.since(job, 0)).extracting(KeptEvent::id).containsExactly("tab-1", "phone-1", "tab-2");
    }

    @Test
    void somethingFound_isWrittenDownOnce() {
        String job = job();
        Event found = Doing.note("tab", 1, "Found, soon: hose cracked");
        append(job, found);
        append(job, found, Doing.note("tab", 2, "Found, soon:  "));
        assertThat(new Findings(books).of(job))
                .extracting(Finding::words, Finding::urgency, Finding::place)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("hose cracked", "soon", "left.strut"));
    }

    @Test
    void manyAtOnce_areAllKeptEachInItsOwnOrder() throws Exception {
        List<String> jobs = List.of(job(), job(), job());
        ExecutorService hands = Executors.newFixedThreadPool(8);
        try {
            List<Future<Received>> all = new ArrayList<>();
            for (int device = 0; device < 8; device++) {
                for (int seq = 1; seq <= 10; seq++) {
                    String job = jobs.get(device % 3);
                    Event event = Doing.of("d" + device, 1, Did.UNDO, "a");
                    Event own = seq == 1 ? event : Doing.of("d" + device + "x" + seq, 1, Did.UNDO, "a");
                    Callable<Received> hand = () -> events.append(job, List.of(own));
                    all.add(hands.submit(hand));
                }
            }
            for (Future<Received> one : all) {
                assertThat(((Received.Kept) one.get()).merged().appended()).hasSize(1);
            }
        } finally {
            hands.shutdownNow();
        }
        int kept = 0;
        for (String job : jobs) {
            assertThat(events.verifyChain(job)).isInstanceOf(Verdict.Whole.class);
            kept += events.all(job).size();
        }
        assertThat(kept).isEqualTo(80);
        assertThat(events.verifyChains()).isEmpty();
    }

    @Test
    void whatWasAltered_isNamed() {
        String whole = job();
        append(whole, Doing.of("tab", 1, Did.UNDO, "a"));
        String job = job();
        append(job, Doing.of("tab", 1, Did.UNDO, "a"), Doing.of("tab", 2, Did.TIGHTEN, "a"));
        append(job, Doing.of("tab", 3, Did.UNDO, "b"));
        unlock(database);
        tamper("update event set body = replace(body, '98.5', '110') where number = 2");
        assertThat(events.verifyChains()).hasSize(1);
        BrokenChain broken = events.verifyChains().get(0);
        assertThat(broken.job()).isEqualTo(job);
        assertThat(broken.fault().number()).isEqualTo(2);
        tamper("update event set body = 'no event' where number = 2");
        assertThat(((Verdict.Broken) events.verifyChain(job)).differs()).contains("no event");
        tamper("delete from event where number = 2");
        assertThat(((Verdict.Broken) events.verifyChain(job)).differs()).contains("numbered 3 where 2 is due");
        tamper("update event set device = 'other' where number = 1");
        assertThat(((Verdict.Broken) events.verifyChain(job)).number()).isEqualTo(1);
    }

    @Test
    void aStatement_cannotAlterAnEvent() {
        String job = job();
        append(job, Doing.of("tab", 1, Did.UNDO, "a"));
        assertThatThrownBy(() -> tamper("update event set body = ''"))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("rows are only added");
    }

    private void tamper(String statement) {
        books.write(change -> change.handle().execute(statement));
    }
}
