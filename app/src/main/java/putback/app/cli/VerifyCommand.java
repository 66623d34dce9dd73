package putback.app.cli;

import java.util.List;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.database.StoreFailure;
import putback.store.inspection.Inspection;
import putback.store.inspection.Inspections;

/** Looks over what lies on the disk. */
final class VerifyCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage(
                "verify",
                "Looks over the books and their photos, and names what is broken.",
                List.of(),
                List.of(BooksPlace.DATA, BooksPlace.DATABASE));
    }

    @Override
    public String more() {
        return """
                It changes nothing, and may run while others work. Exit code 0 when all is whole, 1 when something is broken.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        BooksPlace place = BooksPlace.of("verify", arguments);
        try (Database database = place.look()) {
            terminal.out().println(place.shown() + ", schema " + schema(database.schema()));
            for (Inspection inspection : Inspections.all(place.photos())) {
                List<String> faults = inspection.faults(database);
                if (!faults.isEmpty()) {
                    terminal.say("putback: " + inspection.about() + ": " + faults.get(0) + "."
                            + (faults.size() > 1 ? " And " + (faults.size() - 1) + " more." : "")
                            + " Maybe restore the last backup.");
                    return Exit.FAILED;
                }
                terminal.out().println(inspection.about() + ": whole");
            }
            return Exit.DONE;
        } catch (StoreFailure failure) {
            return BooksPlace.failed(failure, terminal);
        }
    }

    private static String schema(int is) {
        int newest = Databases.newestSchema();
        return is == newest ? String.valueOf(is) : is + "; putback serve brings it to " + newest;
    }
}
