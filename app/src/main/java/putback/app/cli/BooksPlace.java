package putback.app.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import putback.store.books.Books;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.database.StoreFailure;
import putback.store.photos.PhotoFiles;

/**
 * Where the garage's books are, by the options of a command.
 *
 * @param folder with the photos, and the books where no other place is given
 * @param address a file, or a server's
 * @param garage whose they are: several garages may keep theirs at one place, and none sees the others'
 */
record BooksPlace(Path folder, String address, String garage) {
    static final Option GARAGE = Option.value(
            "--garage", "NAME", "whose books, where several garages keep theirs at one place; else garage");
    private static final String USUAL_GARAGE = "garage";
    static final Option DATA = Option.value("--data", "FOLDER", "books and photos; else ~/.local/share/putback");
    static final Option DATABASE =
            Option.value("--database", "ADDRESS", "postgresql://HOST/NAME?user=.. or a file; else garage.db in FOLDER");

    /** Kept, since a logger that nobody holds forgets its level. What they would say comes as a failure, in words. */
    private static final List<Logger> QUIET = List.of(
            Logger.getLogger("com.zaxxer.hikari"),
            Logger.getLogger("org.flywaydb"),
            Logger.getLogger("org.postgresql"),
            Logger.getLogger("org.sqlite"));

    static {
        QUIET.forEach(logger -> logger.setLevel(Level.OFF));
    }

    /** By the options; what is not given is where such data belongs. */
    static BooksPlace of(String command, Arguments arguments) throws UsageFault {
        return of(command, arguments, System.getenv(), System.getProperty("user.home", "."));
    }

    static BooksPlace of(String command, Arguments arguments, Map<String, String> environment, String home)
            throws UsageFault {
        String given = arguments.value(DATA.name()).orElse("");
        String address = arguments.value(DATABASE.name()).orElse("");
        if ((arguments.has(DATA.name()) && given.isBlank()) || (arguments.has(DATABASE.name()) && address.isBlank())) {
            throw Renewing.fault(command, "--data and --database want the name of a place");
        }
        try {
            Path folder = given.isEmpty() ? usual(environment, home) : Databases.file(given);
            String books = address.isEmpty() ? folder.resolve("garage.db").toString() : address;
            if (!Databases.isServer(books)) {
                Databases.file(books);
            }
            return new BooksPlace(folder, books, garage(command, arguments));
        } catch (StoreFailure notAName) {
            throw Renewing.fault(command, String.valueOf(notAName.getMessage()));
        }
    }

    private static String garage(String command, Arguments arguments) throws UsageFault {
        String named = arguments.value(GARAGE.name()).orElse(USUAL_GARAGE);
        if (named.matches("[a-z0-9][a-z0-9-]{0,39}")) {
            return named;
        }
        throw Renewing.fault(
                command,
                "--garage wants a name of at most 40 small letters, digits and hyphens, such as quay-street, not \""
                        + named + "\"");
    }

    /** A folder of its own, which goes when the program ends. */
    static BooksPlace passing() {
        try {
            Path folder = Files.createTempDirectory("putback-demo");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(folder.toFile())));
            return new BooksPlace(folder, folder.resolve("garage.db").toString(), USUAL_GARAGE);
        } catch (IOException failure) {
            throw new StoreFailure(
                    "no folder for the demonstration's books can be made. Maybe give one: --data", failure);
        }
    }

    private static void remove(File file) {
        File[] inside = file.listFiles();
        if (inside != null) {
            for (File one : inside) {
                remove(one);
            }
        }
        if (!file.delete()) {
            file.deleteOnExit();
        }
    }

    /** Source: XDG Base Directory Specification 0.8; a relative path there counts as none. */
    private static Path usual(Map<String, String> environment, String home) {
        String data = environment.getOrDefault("XDG_DATA_HOME", "");
        Path folder = data.startsWith("/") ? Path.of(data) : Path.of(home, ".local", "share");
        return folder.resolve("putback");
    }

    /** Opens the books, and makes them where there are none. */
    Database open() {
        return Databases.open(address);
    }

    /** The garage's books in them. */
    Books books(Database database, Clock clock) {
        return new Books(database, garage, clock);
    }

    /** Opens books that are there, as they are. */
    Database look() {
        return Databases.look(address);
    }

    /**
     * Opens books that are there, at the schema that this program knows.
     *
     * @throws StoreFailure when there are none, or older ones
     */
    Database lookAtNewest() {
        Database database = look();
        int is = database.schema();
        if (is < Databases.newestSchema()) {
            database.close();
            throw new StoreFailure(
                    shown() + ": these books are at schema " + is + ", and nothing was learnt in them yet;"
                            + " putback serve brings them to " + Databases.newestSchema() + ".");
        }
        return database;
    }

    /** As it may be printed. */
    String shown() {
        return Databases.shown(address);
    }

    PhotoFiles photos() {
        return new PhotoFiles(folder.resolve("photos"));
    }

    /** Tells what is wrong, as commands do. */
    static int failed(StoreFailure failure, Terminal terminal) {
        terminal.say("putback: " + failure.getMessage());
        return Exit.FAILED;
    }
}
