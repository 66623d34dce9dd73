package putback.store.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import putback.store.database.Database;

/** What the books promise of people, devices and links, whichever database they lie in. */
abstract class AccessContract {
    private static final Duration HOUR = Duration.ofHours(1);

    private final Later clock = new Later();
    private Database database;
    private Books books;

    abstract Database open();

    @BeforeEach
    void openBooks() {
        database = open();
        books = new Books(database, "g1", clock);
    }

    @AfterEach
    void closeBooks() {
        database.close();
    }

    private Person person(String name, String role) {
        books.write(change -> {
            new People(books).add(change, name, role, "hash of " + name);
            return null;
        });
        return new People(books).named(name).orElseThrow();
    }

    private String session(Person person, String device) {
        return books.write(change -> new Sessions(books).start(change, person.id(), device, HOUR));
    }

    @Test
    void whoSignsIn_isKnownForAnHour_andNotInAnotherGarage() {
        Person mara = person("Mara", Person.OWNER);
        String token = session(mara, "");
        assertThat(new Sessions(books).person(token)).contains(mara);
        assertThat(new Sessions(books).person(token + "A")).isEmpty();
        assertThat(new Sessions(new Books(database, "g2", clock)).person(token)).isEmpty();
        clock.pass(HOUR);
        assertThat(new Sessions(books).person(token)).isEmpty();
    }

    @Test
    void anotherPassword_andLeaving_endWhatWasSignedIn() {
        Person jo = person("Jo", Person.MECHANIC);
        String first = session(jo, "");
        books.write(change -> {
            new People(books).password(change, jo.id(), "another hash");
            return null;
        });
        assertThat(new Sessions(books).person(first)).isEmpty();
        String second = session(jo, "");
        books.write(change -> {
            new People(books).leave(change, jo.id());
            return null;
        });
        assertThat(new Sessions(books).person(second)).isEmpty();
        assertThat(new People(books).named("jo")).get().matches(person -> !person.active());
        assertThat(new People(books).hasOwner()).isFalse();
    }

    @Test
    void aCode_pairsOneDevice_howeverManyTryAtOnce() throws Exception {
        Person mara = person("Mara", Person.OWNER);
        Devices devices = new Devices(books);
        String code = books.write(change -> devices.code(change, mara.id(), HOUR));
        ExecutorService hands = Executors.newFixedThreadPool(6);
        List<Future<Devices.Paired>> tries = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            tries.add(hands.submit(() -> books.write(change -> devices.pair(change, code, "tablet", mara.id()))));
        }
        List<Devices.Paired> paired = new ArrayList<>();
        for (Future<Devices.Paired> one : tries) {
            if (one.get() != null) {
                paired.add(one.get());
            }
        }
        hands.shutdown();
        assertThat(paired).hasSize(1);
        assertThat(devices.all()).hasSize(1);
        assertThat(devices.known(paired.get(0).secret())).isPresent();
        assertThat(devices.holds(code)).isFalse();
    }

    @Test
    void aDeviceThatIsEnded_isNoLongerKnown_norIsWhoSignedInThere() {
        Person mara = person("Mara", Person.OWNER);
        Devices devices = new Devices(books);
        String code = books.write(change -> devices.code(change, mara.id(), HOUR));
        Devices.Paired paired =
                Objects.requireNonNull(books.write(change -> devices.pair(change, code, "tablet", mara.id())));
        String there = session(mara, paired.id());
        String elsewhere = session(mara, "");
        books.write(change -> {
            devices.end(change, paired.id());
            return null;
        });
        assertThat(devices.known(paired.secret())).isEmpty();
        assertThat(new Sessions(books).person(there)).isEmpty();
        assertThat(new Sessions(books).person(elsewhere)).contains(mara);
    }

    @Test
    void aCodeThatIsTooOld_pairsNothing() {
        Person mara = person("Mara", Person.OWNER);
        String code = books.write(change -> new Devices(books).code(change, mara.id(), HOUR));
        clock.pass(HOUR);
        assertThat(new Devices(books).holds(code)).isFalse();
        Devices.Paired paired = books.write(change -> new Devices(books).pair(change, code, "tablet", mara.id()));
        assertThat(paired).isNull();
    }

    @Test
    void anOwnersLink_endsByTime_andWhenAnotherIsMade() {
        Car car = new Car("", "", "WH 12", "", "", "", "", "km", "", "", 0);
        Arrival arrival = new Arrival("knocks", "", "", "", Heights.NONE, "");
        Job job = books.write(change -> {
            Saved<Car> kept = new Cars(books).save(change, car);
            return new Jobs(books).open(change, ((Saved.Done<Car>) kept).value().id(), arrival, "", "Mara");
        });
        Links links = new Links(books);
        String first = books.write(change -> links.make(change, job.id(), HOUR));
        assertThat(links.job(first)).contains(job.id());
        String second = books.write(change -> links.make(change, job.id(), HOUR));
        assertThat(links.job(first)).isEmpty();
        assertThat(links.job(second)).contains(job.id());
        clock.pass(HOUR);
        assertThat(links.job(second)).isEmpty();
    }

    /** A clock that goes on when it is told to. */
    private static final class Later extends Clock {
        private Instant now = Instant.parse("2026-03-02T12:00:00Z");

        void pass(Duration time) {
            now = now.plus(time);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
