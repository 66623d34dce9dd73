package putback.app.cli;

import io.javalin.util.JavalinBindException;
import java.util.concurrent.CountDownLatch;
import putback.app.web.Garage;
import putback.app.web.Server;

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
