package putback.app.cli;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import putback.store.backup.BackupFault;
import putback.store.backup.BackupFile;
import putback.store.backup.Restored;
import putback.store.backup.Restoring;
import putback.store.database.Databases;
import putback.store.database.StoreFailure;

/** Puts a backup in its place. */
final class RestoreCommand implements Command {
    private static final String OVER = "--over";

    @Override
    public Usage usage() {
        return new Usage(
                "restore",
                "Puts a backup in its place, where there are no books yet.",
                List.of("FILE"),
                List.of(
                        Option.flag(OVER, "keep the books that are there beside the restored ones"),
                        BooksPlace.DATA,
                        BooksPlace.DATABASE));
    }

    @Override
    public String more() {
        return """
                A backup of a file can be restored into a server, and the other way round: that is how books move. All of the
                backup is checked before anything is touched. An older schema is brought up to this program's.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        BooksPlace place = BooksPlace.of("restore", arguments);
        String day = LocalDate.now(ZoneOffset.UTC).toString();
        String name = arguments.operands().get(0);
        try (BackupFile backup = BackupFile.open(Databases.file(name))) {
            Restored restored = new Restoring(backup, place.photos()).to(place.address(), arguments.has(OVER), day);
            terminal.out()
                    .println(place.shown() + ": " + restored.rows() + " rows and " + restored.photos()
                            + " photos, as they were at " + backup.head().at());
            if (restored.old() != null) {
                terminal.out().println("The books that were there are now " + restored.old());
            }
            return Exit.DONE;
        } catch (BackupFault fault) {
            terminal.say("putback: " + fault.getMessage());
            return Exit.FAILED;
        } catch (StoreFailure failure) {
            return BooksPlace.failed(failure, terminal);
        }
    }
}
