package putback.app.cli;

import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.learning.Learning;
import putback.app.web.frame.Shelf;
import putback.labour.price.OwnFigures;
import putback.store.books.Books;
import putback.store.database.Database;
import putback.store.database.StoreFailure;
import putback.store.sheets.LearntRead;
import putback.store.sheets.LearntReader;
import putback.store.sheets.SheetReader;

/** What the garage has seen itself: from a file, or from its books. */
final class OwnCases {
    static final Option LEARNT =
            Option.value("--learnt", "FILE.jsonl", "what the garage has seen itself, a line each (docs/labour.md)");

    private OwnCases() {}

    private static boolean areInBooks(Arguments arguments) {
        return arguments.has(BooksPlace.DATA.name()) || arguments.has(BooksPlace.DATABASE.name());
    }

    static void check(Arguments arguments) throws UsageFault {
        if (arguments.has(LEARNT.name()) && areInBooks(arguments)) {
            throw Renewing.fault(
                    PriceCommand.NAME, "--learnt and the books do not go together, since cases would count twice");
        }
        if (arguments.has(BooksPlace.GARAGE.name()) && !areInBooks(arguments)) {
            throw Renewing.fault(PriceCommand.NAME, "--garage goes with --data or --database");
        }
    }

    /** Null when they cannot be had, and why is printed then. */
    static @Nullable OwnFigures of(Arguments arguments, Terminal terminal) throws UsageFault {
        return areInBooks(arguments)
                ? ofBooks(
                        BooksPlace.of(PriceCommand.NAME, arguments),
                        arguments.operands().get(0),
                        terminal)
                : ofFile(arguments.value(LEARNT.name()).orElse(null), terminal);
    }

    private static @Nullable OwnFigures ofBooks(BooksPlace place, String sheet, Terminal terminal) {
        try (Database database = place.lookAtNewest()) {
            Books books = place.books(database, Clock.systemUTC());
            return new Learning(books, new Shelf(books)).of(SheetReader.roots(sheet));
        } catch (StoreFailure failure) {
            BooksPlace.failed(failure, terminal);
            return null;
        }
    }

    private static @Nullable OwnFigures ofFile(@Nullable String file, Terminal terminal) {
        LearntRead read = file == null ? new LearntRead.Sound(List.of()) : LearntReader.read(file);
        if (read instanceof LearntRead.Sound sound) {
            return new OwnFigures(sound.seen());
        }
        FaultLines.say(((LearntRead.Faulty) read).faults(), "a file of what was learnt", terminal);
        return null;
    }
}
