package putback.app.cli;

import io.javalin.util.JavalinBindException;
import java.nio.file.Files;
import java.time.Clock;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import putback.app.web.Server;
import putback.app.web.frame.Garage;
import putback.store.books.Books;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.database.StoreFailure;
import putback.tightening.toolbox.Toolbox;

/** Starts the server and stays until the program is ended. */
final class Serving {
    static final int PORT = 8077;
    private static final int HIGHEST = 65_535;

    private Serving() {}

    static int port(String command, Arguments arguments) throws UsageFault {
        String given = arguments.value("--port").orElse(String.valueOf(PORT));
        try {
            int port = Integer.parseInt(given);
            if (port >= 0 && port <= HIGHEST) {
                return port;
            }
        } catch (NumberFormatException notOne) {
            // told below, like a number outside
        }
        throw Renewing.fault(command, "--port is 0 to " + HIGHEST + ", not \"" + given + "\"");
    }

    /** Serves a garage's books; where they are is said first. */
    static int withBooks(
            int port, BooksPlace place, @Nullable Toolbox toolbox, Clock clock, String path, Terminal terminal) {
        return withBooks(port, place, toolbox, clock, path, terminal, books -> {});
    }

    /**
     * The same after something was done with the books.
     *
     * @param first such as filling them
     */
    static int withBooks(
            int port,
            BooksPlace place,
            @Nullable Toolbox toolbox,
            Clock clock,
            String path,
            Terminal terminal,
            Consumer<Books> first) {
        boolean made = !Databases.isServer(place.address()) && !Files.exists(Databases.file(place.address()));
        try (Database database = place.open()) {
            terminal.out().println((made ? "New books in " : "Books in ") + place.shown());
            Books books = place.books(database, clock);
            first.accept(books);
            return on(port, new Garage(toolbox, clock, books, place.photos()), path, terminal);
        } catch (StoreFailure failure) {
            return BooksPlace.failed(failure, terminal);
        }
    }

    static int on(int port, Garage garage, String path, Terminal terminal) {
        try (Server server = Server.start(port, garage)) {
            terminal.out()
                    .println("Putback serves " + server.address() + path + " on this machine only. Ctrl-C ends it.");
            terminal.out().flush();
            new CountDownLatch(1).await();
            return Exit.DONE;
        } catch (JavalinBindException taken) {
            terminal.say("putback: port " + port + " is taken. Maybe --port 0 for any free one.");
            return Exit.FAILED;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return Exit.DONE;
        }
    }
}
