package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Serving, until it is ended. */
class ServingTest {
    @TempDir
    private Path folder;

    /** What it says until the line with its address, which must answer; then it is ended. */
    private static List<String> serve(String... words) throws Exception {
        PipedInputStream read = new PipedInputStream(1 << 20);
        PrintStream out = new PrintStream(new PipedOutputStream(read), true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        Thread serving = new Thread(() -> Commands.run(List.of(words), new Terminal(out, err)));
        serving.start();
        try {
            List<String> said = lines(new BufferedReader(new InputStreamReader(read, StandardCharsets.UTF_8)));
            String last = said.get(said.size() - 1);
            String address = last.substring(last.indexOf("http://"), last.indexOf(" on this machine"));
            URI sheet = URI.create(address).resolve("/sheet/front-strut");
            int status = HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(sheet).build(), BodyHandlers.ofString())
                    .statusCode();
            assertThat(status).isEqualTo(200);
            return said;
        } finally {
            serving.interrupt();
            serving.join();
        }
    }

    private static List<String> lines(BufferedReader reader) throws IOException {
        List<String> said = new ArrayList<>();
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
            said.add(line);
            if (line.startsWith("Putback serves ")) {
                break;
            }
        }
        return said;
    }

    @Test
    void serve_makesTheBooksOnce_andSaysWhere() throws Exception {
        String data = folder.resolve("books").toString();
        Path file = folder.resolve("books").resolve("garage.db");
        assertThat(serve("serve", "--port", "0", "--data", data)).startsWith("New books in " + file);
        assertThat(serve("serve", "--port", "0", "--data", data)).startsWith("Books in " + file);
        assertThat(Said.by("verify", "--data", data).exit()).isEqualTo(Exit.DONE);
    }

    @Test
    void demo_keepsItsBooksInAPassingFolder_unlessOneIsGiven() throws Exception {
        assertThat(serve("demo", "--port", "0"))
                .anyMatch(line -> line.startsWith("New books in ") && line.contains("putback-demo"));
        String data = folder.resolve("demo").toString();
        assertThat(serve("demo", "--port", "0", "--data", data))
                .anyMatch(line -> line.startsWith("New books in " + data));
    }

    @Test
    void booksThatCannotBeOpened_areToldInsteadOfServed() {
        Said said = Said.by("serve", "--port", "0", "--database", folder.toString());
        assertThat(said.exit()).isEqualTo(Exit.FAILED);
        assertThat(said.err()).contains("cannot be opened");
    }
}
