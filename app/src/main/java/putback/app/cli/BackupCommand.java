package putback.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import putback.store.backup.BackingUp;
import putback.store.backup.BackupFault;
import putback.store.backup.Written;
import putback.store.books.Books;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.database.StoreFailure;

/** Copies the books and photos into one file. */
final class BackupCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage(
                "backup",
                "Copies the books and their photos into one file, while others work on.",
                List.of("FILE"),
                List.of(BooksPlace.DATA, BooksPlace.DATABASE));
    }

    @Override
    public String more() {
        return """
                The file has checksums, so that restore notices when it is cut off or altered. It may take the place of an
                older backup, never of anything else. It holds customers' names: keep it where nobody else reads it.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        BooksPlace place = BooksPlace.of("backup", arguments);
        String name = arguments.operands().get(0);
        try (Database database = place.look()) {
            Path file = Databases.file(name);
            String now = Books.text(Clock.systemUTC().instant());
            Written written = BackingUp.write(database, place.photos(), now, file);
            terminal.out()
                    .println(name + ": " + written.rows() + " rows and " + written.photos() + " photos of "
                            + place.shown());
            for (String missing : written.missing()) {
                terminal.say("putback: a photo is not in the backup: " + missing + ".");
            }
            return written.missing().isEmpty() ? Exit.DONE : Exit.FAILED;
        } catch (BackupFault fault) {
            terminal.say("putback: " + fault.getMessage());
            return Exit.FAILED;
        } catch (StoreFailure failure) {
            return BooksPlace.failed(failure, terminal);
        }
    }
}
