package putback.store.durability;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Stands between a child and its disk; see {@code disk.c}, which is compiled here. */
final class DiskShim {
    private final Path library;

    private DiskShim(Path library) {
        this.library = library;
    }

    static DiskShim compile(Path folder) throws IOException, InterruptedException {
        Path source = folder.resolve("disk.c");
        Path library = folder.resolve("disk.so");
        try (InputStream code = DiskShim.class.getResourceAsStream("disk.c")) {
            if (code == null) {
                throw new IOException("disk.c is not among the test's resources");
            }
            Files.copy(code, source);
        }
        Process compiler = start(source, library);
        String said = new String(compiler.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (compiler.waitFor() != 0) {
            throw new IOException("gcc: " + said);
        }
        return new DiskShim(library);
    }

    private static Process start(Path source, Path library) throws IOException {
        try {
            return new ProcessBuilder(
                            "gcc",
                            "-shared",
                            "-fPIC",
                            "-O1",
                            "-o",
                            library.toString(),
                            source.toString(),
                            "-ldl",
                            "-lpthread")
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException missing) {
            throw new IOException(
                    "a C compiler is needed on Linux; ./check installs gcc, see CONTRIBUTING.md", missing);
        }
    }

    /** What a child is started with so that its disk is recorded. */
    Map<String, String> recording(Path disk, Path log) throws IOException {
        return Map.of(
                "LD_PRELOAD", library.toString(),
                "PUTBACK_DISK", disk.toRealPath().toString(),
                "PUTBACK_DISK_LOG", log.toString());
    }

    /** What a child is started with so that its disk says what a file in that folder is called. */
    Map<String, String> saying(Path disk, Path says) throws IOException {
        return Map.of(
                "LD_PRELOAD", library.toString(),
                "PUTBACK_DISK", disk.toRealPath().toString(),
                "PUTBACK_DISK_SAYS", says.toString());
    }
}
