package putback.store.database;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** A real server on loopback for the length of a test run, with fsync on; a new database for each who asks. */
public final class PostgresServer {
    private static final AtomicInteger DATABASES = new AtomicInteger();
    private static final String NAME = "putback";

    private final int port;
    private final List<String> starting;
    private final List<String> stopping;

    private PostgresServer(int port, List<String> starting, List<String> stopping) {
        this.port = port;
        this.starting = starting;
        this.stopping = stopping;
    }

    private static final class Running {
        static final PostgresServer SERVER = create();
    }

    /** An address of an empty database. */
    public static String freshDatabase() {
        return Running.SERVER.newDatabase();
    }

    /** A server of one's own, which may be stopped. */
    static PostgresServer own() {
        return create();
    }

    void stop() throws IOException {
        run(stopping);
    }

    void start() throws IOException {
        run(starting);
    }

    String newDatabase() {
        String name = "books" + DATABASES.incrementAndGet();
        try (java.sql.Connection connection = java.sql.DriverManager.getConnection("jdbc:" + address("postgres"));
                java.sql.Statement statement = connection.createStatement()) {
            statement.execute("create database " + name);
        } catch (java.sql.SQLException failure) {
            throw new IllegalStateException("no database could be made", failure);
        }
        return address(name);
    }

    private String address(String database) {
        return "postgresql://127.0.0.1:" + port + "/" + database + "?user=" + NAME;
    }

    private static PostgresServer create() {
        try {
            Path folder = Files.createTempDirectory("putback-server");
            Path data = folder.resolve("data");
            boolean root = "root".equals(System.getProperty("user.name"));
            if (root) {
                run(List.of("chown", "postgres", folder.toString()));
            }
            Path programs = programs();
            int port = freePort();
            run(as(root, programs.resolve("initdb") + " -D " + data + " -U " + NAME + " -A trust -E UTF8 --locale=C"));
            String options = "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories=" + folder;
            String control = programs.resolve("pg_ctl") + " -D " + data;
            List<String> starting =
                    as(root, control + " -w -l " + folder.resolve("log") + " -o '" + options + "' start");
            List<String> stopping = as(root, control + " -w -m immediate stop");
            run(starting);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> end(stopping, folder)));
            return new PostgresServer(port, starting, stopping);
        } catch (IOException failure) {
            throw new IllegalStateException(
                    "PostgreSQL could not be started; ./check installs it, see CONTRIBUTING.md", failure);
        }
    }

    private static void end(List<String> stop, Path folder) {
        try {
            run(stop);
        } catch (IOException stopped) {
            // A test may have stopped it.
        }
        try {
            run(List.of("rm", "-rf", folder.toString()));
        } catch (IOException gone) {
            // The server ends with the machine at the latest.
        }
    }

    /** The server refuses to run as root. */
    private static List<String> as(boolean root, String command) {
        return root ? List.of("su", "postgres", "-s", "/bin/sh", "-c", command) : List.of("sh", "-c", command);
    }

    private static Path programs() throws IOException {
        Path debian = Path.of("/usr/lib/postgresql");
        if (!Files.isDirectory(debian)) {
            throw new IOException(debian + " is not there");
        }
        try (Stream<Path> versions = Files.list(debian)) {
            return versions.map(version -> version.resolve("bin"))
                    .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                    .max(java.util.Comparator.naturalOrder())
                    .orElseThrow(() -> new IOException("no initdb below " + debian));
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    private static void run(List<String> words) throws IOException {
        Path output = Files.createTempFile("putback", ".out");
        Process process = new ProcessBuilder(new ArrayList<>(words))
                .directory(Path.of("/").toFile())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        try {
            int exit = process.waitFor();
            if (exit != 0) {
                throw new IOException(
                        words + " ended with " + exit + ": " + Files.readString(output, StandardCharsets.UTF_8));
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", interrupted);
        } finally {
            Files.deleteIfExists(output);
        }
    }
}
