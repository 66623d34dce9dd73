package putback.store.photos;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import putback.store.database.Folders;
import putback.store.database.StoreFailure;

/** The photos' files: {@code ab/cdef...} by their SHA-256. A file that is there under its name is there whole. */
public final class PhotoFiles {
    private final Path folder;

    public PhotoFiles(Path folder) {
        this.folder = folder;
    }

    /**
     * Where a photo lies.
     *
     * @throws IllegalArgumentException for what is no hash
     */
    public Path path(String hash) {
        if (!Hash.isOne(hash)) {
            throw new IllegalArgumentException("this is no SHA-256");
        }
        return folder.resolve(hash.substring(0, 2)).resolve(hash.substring(2));
    }

    /** Its bytes; nothing for one that is not there, or for what is no hash. */
    public Optional<byte[]> read(String hash) {
        if (!Hash.isOne(hash) || !Files.isRegularFile(path(hash))) {
            return Optional.empty();
        }
        try {
            return Optional.of(Files.readAllBytes(path(hash)));
        } catch (IOException failure) {
            throw failed("read", failure);
        }
    }

    /**
     * Keeps a file; on disk when it returns.
     *
     * @return its hash
     */
    public String keep(byte[] file) {
        String hash = Hash.of(file);
        Path place = path(hash);
        try {
            if (!holds(place, hash)) {
                Folders.make(folder);
                Folders.make(folder.resolve(hash.substring(0, 2)));
                write(place, file);
            }
            return hash;
        } catch (IOException failure) {
            throw failed("kept", failure);
        }
    }

    /** What is wrong with the file that should lie there; empty for nothing. */
    public String wrong(String hash) {
        if (!Hash.isOne(hash)) {
            return "its hash is none";
        }
        Path place = path(hash);
        try {
            return !Files.isRegularFile(place)
                    ? place + " is not there"
                    : holds(place, hash) ? "" : place + " is not what was kept";
        } catch (IOException failure) {
            return place + " cannot be read";
        }
    }

    private static boolean holds(Path place, String hash) throws IOException {
        return Files.isRegularFile(place) && Hash.of(Files.readAllBytes(place)).equals(hash);
    }

    /** Beside its place first, since another hand may keep the same photo at this moment. */
    private static void write(Path place, byte[] file) throws IOException {
        Path folder = place.resolveSibling(".");
        Path beside = Files.createTempFile(folder, ".", ".part");
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                ByteBuffer left = ByteBuffer.wrap(file);
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            }
            Files.move(beside, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            Folders.sync(folder);
            Folders.sync(folder.resolve(".."));
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private StoreFailure failed(String what, IOException failure) {
        String why = String.valueOf(failure.getMessage());
        return new StoreFailure(
                folder + ": the photo cannot be " + what + ". "
                        + (why.contains("No space left")
                                ? "The disk is full; make room, then send it again."
                                : "Is the folder there, and may this user write in it? (" + why + ")"),
                failure);
    }
}
