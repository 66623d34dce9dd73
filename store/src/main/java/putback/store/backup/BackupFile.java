package putback.store.backup;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import putback.store.photos.Hash;

/** A backup that was read from its first byte to its last: all of it is there and as it was written. */
public final class BackupFile implements AutoCloseable {
    private static final int SUM = 64;

    private final ZipFile zip;
    private final Head head;
    private final Map<String, String> sums;

    private BackupFile(ZipFile zip, Head head, Map<String, String> sums) {
        this.zip = zip;
        this.head = head;
        this.sums = sums;
    }

    /**
     * Opens a backup and checks all of it.
     *
     * @throws BackupFault what is wrong with it
     */
    public static BackupFile open(Path file) throws BackupFault {
        if (!Files.isRegularFile(file)) {
            throw new BackupFault(file + ": there is no such file.");
        }
        if (!isOne(file)) {
            throw new BackupFault(file + ": this is no backup that Putback wrote.");
        }
        try {
            ZipFile zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
            try {
                return checked(file, zip);
            } catch (IOException | BackupFault | RuntimeException fault) {
                zip.close();
                throw fault;
            }
        } catch (IOException | IllegalArgumentException damaged) {
            throw damaged(file, "it is cut off, or altered");
        }
    }

    /** Whether a file starts as a backup does; more is not looked at. */
    static boolean isOne(Path file) {
        byte[] name = Names.HEAD.getBytes(StandardCharsets.US_ASCII);
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] start = stream.readNBytes(30 + name.length);
            return start.length == 30 + name.length
                    && start[0] == 'P'
                    && start[1] == 'K'
                    && new String(start, 30, name.length, StandardCharsets.US_ASCII).equals(Names.HEAD);
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static BackupFault damaged(Path file, String how) {
        return new BackupFault(file + ": this backup is damaged: " + how + ". Nothing was touched. Take an older one.");
    }

    private static BackupFile checked(Path file, ZipFile zip) throws IOException, BackupFault {
        Map<String, String> sums = sums(file, zip);
        Enumeration<? extends ZipEntry> entries = zip.entries();
        int count = 0;
        while (entries.hasMoreElements()) {
            ZipEntry entry = entries.nextElement();
            count++;
            if (entry.getName().equals(Names.SUMS)) {
                continue;
            }
            if (!sum(zip, entry).equals(sums.get(entry.getName()))) {
                throw damaged(file, entry.getName() + " is not what was written");
            }
        }
        if (count != sums.size() + 1) {
            throw damaged(file, "a part of it is missing");
        }
        Head head = Head.of(text(zip, Names.HEAD));
        if (head == null) {
            throw damaged(file, "its head cannot be read");
        }
        if (head.format() > Head.FORMAT) {
            throw new BackupFault(
                    file + ": this backup is of format " + head.format() + ", but this program knows only "
                            + Head.FORMAT + ". It was written by a newer Putback; restore it with that one.");
        }
        return new BackupFile(zip, head, sums);
    }

    private static Map<String, String> sums(Path file, ZipFile zip) throws IOException, BackupFault {
        Map<String, String> sums = new LinkedHashMap<>();
        for (String line : text(zip, Names.SUMS).lines().toList()) {
            String name = line.length() > SUM + 2 ? line.substring(SUM + 2) : "";
            if (!Names.isKnown(name)) {
                throw damaged(file, "its list of parts cannot be read");
            }
            sums.put(name, line.substring(0, SUM));
        }
        if (!sums.containsKey(Names.HEAD)) {
            throw damaged(file, "it is cut off, or altered");
        }
        return sums;
    }

    private static String text(ZipFile zip, String name) throws IOException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            return "";
        }
        try (InputStream stream = zip.getInputStream(entry)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String sum(ZipFile zip, ZipEntry entry) throws IOException {
        java.security.MessageDigest digest = Hash.start();
        try (InputStream stream = zip.getInputStream(entry)) {
            byte[] piece = new byte[1 << 16];
            for (int length = stream.read(piece); length >= 0; length = stream.read(piece)) {
                digest.update(piece, 0, length);
            }
        }
        return Hash.text(digest.digest());
    }

    /** What it says about itself. */
    public Head head() {
        return head;
    }

    /** Its entries' names, in the order in which they were written. */
    Iterable<String> names() {
        return sums.keySet();
    }

    InputStream stream(String name) throws IOException {
        @Nullable ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw new IOException(name + " is gone");
        }
        return zip.getInputStream(entry);
    }

    @Override
    public void close() {
        try {
            zip.close();
        } catch (IOException already) {
            // It was only read.
        }
    }
}
