package putback.app.web;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import putback.app.access.Authority;
import putback.app.access.Identity;
import putback.app.access.Network;
import putback.app.access.Passwords;
import putback.app.web.door.Gate;
import putback.app.web.frame.Garage;
import putback.store.books.Books;
import putback.store.books.People;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;

/** A garage that is served to its network, with the owner Ilva Brand and the mechanic Tom Reed, before a client that trusts it. */
final class Lan implements AutoCloseable {
    static final String OWNER = "Ilva Brand";
    static final String MECHANIC = "Tom Reed";
    static final String PASSWORD = "four wheels and a jack";

    final Path folder;
    final Later clock = new Later();
    final Books books;
    final Server server;
    final Identity identity;
    private final Database database;
    private final HttpClient client;

    Lan() throws Exception {
        this(List.of("localhost", Network.LOOPBACK));
    }

    /** By these names and addresses. */
    Lan(List<String> names) throws Exception {
        folder = Files.createTempDirectory("putback");
        database = SqliteDatabase.open(folder.resolve("garage.db"));
        books = new Books(database, "garage", clock);
        String hash = Passwords.hash(PASSWORD);
        books.write(change -> {
            new People(books).add(change, OWNER, "owner", hash);
            new People(books).add(change, MECHANIC, "mechanic", hash);
            return hash;
        });
        identity = Authority.identity(folder.resolve("keys"), names, clock);
        server = Server.start(0, new Garage(null, clock, books), new Network(names, identity));
        client = HttpClient.newBuilder().sslContext(trusting(identity)).build();
    }

    private static SSLContext trusting(Identity identity) throws Exception {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("garage", identity.authority());
        TrustManagerFactory factory = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        factory.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, factory.getTrustManagers(), new SecureRandom());
        return context;
    }

    HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        return client.send(request, BodyHandlers.ofString());
    }

    HttpRequest.Builder to(String path, String cookie) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.address() + path));
        return cookie.isEmpty() ? request : request.header("Cookie", cookie);
    }

    HttpResponse<String> get(String path, String cookie) throws IOException, InterruptedException {
        return send(to(path, cookie).build());
    }

    String address() {
        return server.address();
    }

    HttpResponse<byte[]> bytes(String path, String cookie) throws IOException, InterruptedException {
        return client.send(to(path, cookie).build(), BodyHandlers.ofByteArray());
    }

    HttpResponse<String> post(String path, String cookie, Map<String, String> form)
            throws IOException, InterruptedException {
        return send(to(path, cookie)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", server.address())
                .POST(HttpRequest.BodyPublishers.ofString(form(form)))
                .build());
    }

    static String form(Map<String, String> form) {
        return form.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    HttpResponse<String> tries(String name, String password) throws IOException, InterruptedException {
        return post("/sign-in", "", Map.of("name", name, "password", password));
    }

    /** The cookie of a new session. */
    String signedIn(String name) throws IOException, InterruptedException {
        return session(tries(name, PASSWORD));
    }

    /** The session that an answer starts; empty when it starts none. */
    static String session(HttpResponse<String> answer) {
        return cookie(answer, Gate.SESSION);
    }

    static String cookie(HttpResponse<String> answer, String name) {
        for (String set : answer.headers().allValues("Set-Cookie")) {
            if (set.startsWith(name + "=")) {
                return set.substring(0, set.indexOf(';'));
            }
        }
        return "";
    }

    @Override
    public void close() {
        server.close();
        database.close();
    }

    /** A clock that can be put forward. */
    static final class Later extends Clock {
        private volatile Duration ahead = Duration.ZERO;

        void forward(Duration by) {
            ahead = ahead.plus(by);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return Instant.now().plus(ahead);
        }
    }
}
