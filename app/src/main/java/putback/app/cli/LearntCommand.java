package putback.app.cli;

import java.time.Clock;
import java.util.List;
import putback.app.json.LearntJson;
import putback.app.learning.Learning;
import putback.app.web.frame.Shelf;
import putback.store.books.Books;
import putback.store.books.Lesson;
import putback.store.database.Database;
import putback.store.database.StoreFailure;

/** What the garage's books have taught. */
final class LearntCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage(
                "learnt",
                "Prints what the garage's finished jobs have taught of minutes, seizures and resorts.",
                List.of(),
                List.of(BooksPlace.DATA, BooksPlace.DATABASE, BooksPlace.GARAGE));
    }

    @Override
    public String more() {
        return """
                One JSON object a line, as putback price --learnt reads them: they can be looked
                at, corrected, and carried to another garage. sheet says to which family of cars
                a line belongs. The pages use the same by themselves; docs/labour.md has the rules.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        BooksPlace place = BooksPlace.of("learnt", arguments);
        try (Database database = place.lookAtNewest()) {
            Books books = place.books(database, Clock.systemUTC());
            for (Lesson lesson : new Learning(books, new Shelf(books)).all()) {
                terminal.out().println(LearntJson.of(lesson));
            }
            return Exit.DONE;
        } catch (StoreFailure failure) {
            return BooksPlace.failed(failure, terminal);
        }
    }
}
