package putback.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;

/** Writes a paper to a file: all of it or none, and never over something that is no paper. */
final class PdfFile {
    private static final byte[] START = "%PDF-".getBytes(StandardCharsets.US_ASCII);

    private PdfFile() {}

    /** What is wrong with the name before any work is done for it; empty for nothing. */
    static String wrong(String name) {
        if (name.isBlank()) {
            return "the name of the file is empty";
        }
        try {
            Path path = Path.of(name).toAbsolutePath();
            if (Files.isDirectory(path)) {
                return name + " is a folder; give the name of a file in it, such as job-card.pdf";
            }
            Path folder = path.getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                return name + ": there is no folder " + folder + "; make it first";
            }
            return Files.exists(path) ? wrongThere(name, path) : "";
        } catch (InvalidPathException | IOException fault) {
            return name + ": " + FileFault.said(fault);
        }
    }

    private static String wrongThere(String name, Path path) throws IOException {
        if (!Files.isRegularFile(path) || !isPdf(path)) {
            return name + " is there and is no PDF, so it is not written over; give another name";
        }
        return Files.isWritable(path) ? "" : name + " is read-only; give another name";
    }

    private static boolean isPdf(Path path) throws IOException {
        try (InputStream stream = Files.newInputStream(path)) {
            return Arrays.equals(stream.readNBytes(START.length), START);
        }
    }

    /**
     * Writes it beside its place first, then moves it there.
     *
     * @return one of {@link Exit}; what failed is told
     */
    static int write(byte[] pdf, String name, Terminal terminal) {
        String wrong = wrong(name);
        if (!wrong.isEmpty()) {
            terminal.say("putback: --pdf: " + wrong);
            return Exit.BAD_INPUT;
        }
        Path path = Path.of(name).toAbsolutePath();
        Path beside = path.resolveSibling("." + path.getFileName() + ".part");
        try {
            Files.write(beside, pdf);
            move(beside, path);
            return Exit.DONE;
        } catch (IOException fault) {
            terminal.say("putback: cannot write " + name + ": " + said(fault));
            return Exit.FAILED;
        } finally {
            discard(beside);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void discard(Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException stays) {
            // what could not be written could not be removed either; the first fault has been told
        }
    }

    /** Why it failed, plainly. */
    static String said(IOException fault) {
        String why = FileFault.said(fault);
        if (why.contains("No space left")) {
            return "the disk is full";
        }
        if (why.contains("Read-only file system")) {
            return "the disk is read-only";
        }
        return fault instanceof java.nio.file.AccessDeniedException ? "its folder may not be written to" : why;
    }
}
