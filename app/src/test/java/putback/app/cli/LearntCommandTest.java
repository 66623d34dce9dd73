package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.job.Stage;
import putback.store.books.Arrival;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Events;
import putback.store.books.Heights;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.books.Scope;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.sheets.EventLines;
import putback.store.sheets.EventsRead;

/** What the books have taught, as it is typed. The jobs were done before anything was learnt by itself. */
class LearntCommandTest {
    private static final String LEDGER = """
            {"id":"1","device":"tab","seq":1,"by":"M","do":"height","at":"2026-03-02T09:00:00Z"}
            {"id":"2","device":"tab","seq":2,"by":"M","do":"undo","joint":"left.damper-lower","at":"2026-03-02T09:04:30Z"}
            {"id":"3","device":"tab","seq":3,"by":"M","do":"note","joint":"left.damper-upper","reason":"Will not move (stuck)","at":"2026-03-02T09:05:00Z"}
            {"id":"4","device":"tab","seq":4,"by":"M","do":"note","joint":"left.damper-upper","reason":"Will not move (stuck): tried heat, yes","at":"2026-03-02T09:12:15Z"}
            {"id":"5","device":"tab","seq":5,"by":"M","do":"undo","joint":"left.damper-upper","at":"2026-03-02T09:13:00Z"}
            """;
    private static final List<String> PRICE = List.of("price", "demo-van", "--renew", "damper", "--rust", "3");

    @TempDir
    private Path folder;

    private void done(Books books, Stage stage) {
        Job job = books.write(change -> {
            Car car = kept(new Cars(books)
                    .save(change, new Car("", "", "WH 12", "", "Tamsel", "Dory", "2014", "km", "", "", 0)));
            Job opened = new Jobs(books)
                    .open(change, car.id(), new Arrival("bangs", "", "", "", Heights.NONE, ""), "", "Mara");
            Job named =
                    kept(new Jobs(books).save(change, opened.with(new Scope("demo-van", "damper", "left", "", "3"))));
            return kept(new Jobs(books).move(change, named, stage, "Mara", ""));
        });
        new Events(books).append(job.id(), ((EventsRead.Sound) EventLines.read("events", LEDGER)).events());
    }

    private static <T> T kept(Saved<T> saved) {
        return ((Saved.Done<T>) saved).value();
    }

    private String books() {
        try (Database database = Databases.open(folder.resolve("garage.db").toString())) {
            Books books = new Books(database, "garage", Clock.systemUTC());
            for (int i = 0; i < 12; i++) {
                done(books, Stage.HANDED_OVER);
            }
            done(books, Stage.UNDER_WAY);
        }
        return folder.toString();
    }

    private static Said price(String... more) {
        return Said.by(Stream.concat(PRICE.stream(), List.of(more).stream()).toArray(String[]::new));
    }

    @Test
    void whatFinishedJobsTaught_isPrinted_andPricesTheSameFromTheFileAsFromTheBooks() throws IOException {
        String books = books();
        Said learnt = Said.by("learnt", "--data", books);
        assertThat(learnt.exit()).isEqualTo(Exit.DONE);
        assertThat(learnt.out().lines().limit(5).toList())
                .containsExactly(
                        "{\"sheet\":\"twist-beam\",\"joint\":\"damper-upper\",\"do\":\"open\",\"minutes\":1.25}",
                        "{\"sheet\":\"twist-beam\",\"joint\":\"damper-upper\",\"rust\":3,\"of\":1,\"seized\":1}",
                        "{\"sheet\":\"twist-beam\",\"joint\":\"damper-lower\",\"do\":\"open\",\"minutes\":4.5}",
                        "{\"sheet\":\"twist-beam\",\"joint\":\"damper-lower\",\"rust\":3,\"of\":1,\"seized\":0}",
                        "{\"sheet\":\"twist-beam\",\"resort\":\"heat\",\"worked\":true,\"minutes\":7.25}");
        assertThat(learnt.out().lines()).hasSize(60);
        Path file = Files.writeString(folder.resolve("learnt.jsonl"), learnt.out(), StandardCharsets.UTF_8);
        Said fromBooks = price("--data", books);
        assertThat(fromBooks.out()).contains("Damper lower bolt, left, opening: your own 12 of these");
        assertThat(fromBooks.out()).isEqualTo(price("--learnt", file.toString()).out());
        assertThat(fromBooks.out()).isNotEqualTo(price().out());
    }

    @Test
    void booksThatAreNotThere_areNotMade_andCasesAreNotCountedTwice() {
        String none = folder.resolve("none").toString();
        assertThat(Said.by("learnt", "--data", none).err()).contains("there are no books here");
        assertThat(price("--data", none).exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(folder.resolve("none")).doesNotExist();
        assertThat(price("--data", none, "--learnt", "x.jsonl").err()).contains("cases would count twice");
        assertThat(price("--garage", "quay-street").err()).contains("--garage goes with --data or --database");
    }

    @Test
    void olderBooks_areNotChanged_andItIsSaidWhatBringsThemOn() {
        String file = folder.resolve("old.db").toString();
        Databases.fresh(file, 4).close();
        Said said = Said.by("learnt", "--database", file);
        assertThat(said.exit()).isEqualTo(Exit.FAILED);
        assertThat(said.err()).contains("at schema 4", "putback serve brings them to");
    }
}
