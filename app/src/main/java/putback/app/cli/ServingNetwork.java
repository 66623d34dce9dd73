package putback.app.cli;

import io.javalin.util.JavalinBindException;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import putback.app.access.AccessFault;
import putback.app.access.Authority;
import putback.app.access.Network;
import putback.app.web.Server;
import putback.app.web.frame.Garage;
import putback.store.books.Books;
import putback.store.books.People;
import putback.store.database.Database;
import putback.store.database.StoreFailure;
import putback.tightening.toolbox.Toolbox;

/** Serves the garage's network, and stays until the program is ended. */
final class ServingNetwork {
    private ServingNetwork() {}

    static int withBooks(
            int port, BooksPlace place, @Nullable Toolbox toolbox, Clock clock, List<String> given, Terminal terminal) {
        try (Database database = place.open()) {
            Books books = place.books(database, clock);
            if (!new People(books).hasOwner()) {
                terminal.say("putback: nobody can sign in yet. Maybe: putback person add NAME --role owner");
                return Exit.BAD_INPUT;
            }
            List<String> names = Network.namesOfThisMachine(given);
            Network network =
                    new Network(names, Authority.identity(place.folder().resolve("keys"), names, clock));
            terminal.out().println("Books in " + place.shown());
            return on(port, new Garage(toolbox, clock, books), network, terminal);
        } catch (StoreFailure failure) {
            return BooksPlace.failed(failure, terminal);
        } catch (AccessFault fault) {
            terminal.say("putback: " + fault.getMessage());
            return Exit.FAILED;
        }
    }

    private static int on(int port, Garage garage, Network network, Terminal terminal) {
        try (Server server = Server.start(port, garage, network)) {
            String address = server.address();
            String reached = "https://" + network.forPhones() + address.substring(address.lastIndexOf(':'));
            terminal.out().println("Putback serves " + reached + "/ to this network. Ctrl-C ends it.");
            terminal.out().println("Phones learn to trust it at " + server.trustAddress() + ", once. Fingerprint:");
            terminal.out().println(network.identity().fingerprint());
            terminal.out().flush();
            new CountDownLatch(1).await();
            return Exit.DONE;
        } catch (JavalinBindException taken) {
            terminal.say("putback: port " + port + " or the one after it is taken. Maybe --port 0 for any free ones.");
            return Exit.FAILED;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return Exit.DONE;
        }
    }
}
