package putback.store.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/**
 * Files that come with the program. They are looked for in the jar that this class is in: the class loader would open
 * every jar before it first, which takes longer than reading a sheet.
 */
final class Shipped {
    /** Kept open for as long as the program runs; null where the classes are in no jar. */
    private static final @Nullable ZipFile JAR = jar();

    private Shipped() {}

    static boolean has(String name) {
        return JAR == null ? loader().getResource(name) != null : JAR.getEntry(name) != null;
    }

    /** Null when nothing is called so. */
    static @Nullable InputStream open(String name) throws IOException {
        if (JAR == null) {
            return loader().getResourceAsStream(name);
        }
        ZipEntry entry = JAR.getEntry(name);
        return entry == null ? null : JAR.getInputStream(entry);
    }

    private static ClassLoader loader() {
        return Shipped.class.getClassLoader();
    }

    private static @Nullable ZipFile jar() {
        CodeSource source = Shipped.class.getProtectionDomain().getCodeSource();
        try {
            Path file = source == null ? null : Path.of(source.getLocation().toURI());
            return file != null && Files.isRegularFile(file) ? new ZipFile(file.toFile()) : null;
        } catch (IOException | URISyntaxException | RuntimeException elsewhere) {
            return null;
        }
    }
}
