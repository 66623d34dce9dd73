package putback.app.access;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.util.EnumSet;
import org.jspecify.annotations.Nullable;

/** Keys in a folder that nobody but its owner can read. */
final class KeyFiles {
    private static final String FORMAT = "PKCS12";
    private static final boolean HAS_PERMISSIONS =
            FileSystems.getDefault().supportedFileAttributeViews().contains("posix");

    private final Path folder;

    KeyFiles(Path folder) {
        this.folder = folder;
    }

    /** Null when there is no such file. */
    @Nullable
    KeyStore read(String name) throws IOException, GeneralSecurityException {
        Path file = folder.resolve(name);
        if (!Files.exists(file)) {
            return null;
        }
        KeyStore keys = KeyStore.getInstance(FORMAT);
        try (InputStream stream = Files.newInputStream(file)) {
            keys.load(stream, Identity.PASSWORD.toCharArray());
        }
        return keys;
    }

    /** Writes a key and its certificates, all of it or nothing, and never so that others could read it meanwhile. */
    KeyStore write(String name, String alias, PrivateKey key, Certificate... chain)
            throws IOException, GeneralSecurityException {
        KeyStore keys = KeyStore.getInstance(FORMAT);
        keys.load(null, null);
        keys.setKeyEntry(alias, key, Identity.PASSWORD.toCharArray(), chain);
        Files.createDirectories(folder, owners("rwx------"));
        Path part = folder.resolve(name + ".part");
        Files.deleteIfExists(part);
        try (OutputStream stream = Channels.newOutputStream(Files.newByteChannel(
                part, EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), owners("rw-------")))) {
            keys.store(stream, Identity.PASSWORD.toCharArray());
        }
        Files.move(part, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        return keys;
    }

    private static FileAttribute<?>[] owners(String permissions) {
        return HAS_PERMISSIONS
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }
}
