package putback.store.database;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;

/** Folders for what is nobody else's business. */
public final class Folders {
    private Folders() {}

    /** Sees to it that a name that was given in the folder is still there after a power cut. */
    public static void sync(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
                names.force(true);
            }
        }
    }

    /** Makes the folder where it is missing, for this user alone; one that is there stays as it is. */
    public static void make(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createDirectories(
                    folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        } else {
            Files.createDirectories(folder);
        }
    }

    /** Makes an empty file that only this user may read, where there is none. What is wrong is told when it is opened. */
    static void reserve(Path file) {
        if (Files.exists(file)
                || !file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return;
        }
        try {
            Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        } catch (IOException atOpening) {
            // Opening it meets the same.
        }
    }
}
