package putback.proof;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The data files that come with the program, in their publisher's shape. */
final class Files {
    private static final String FOLDER = "/putback/proof/";

    private Files() {}

    static String text(String name) {
        try (InputStream stream = Files.class.getResourceAsStream(FOLDER + name)) {
            if (stream == null) {
                throw new IllegalStateException("the data file " + name + " is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
