package putback.store.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.LocalDateTime;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import putback.store.photos.Hash;

/** A zip file being written, with the checksums of all its entries in the last one. */
final class Archive implements AutoCloseable {
    /** The same in every file, so that the same books make the same bytes. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final ZipOutputStream zip;
    private final StringBuilder sums = new StringBuilder();

    /** Writes one entry. */
    interface Writing {
        void to(OutputStream stream) throws IOException;
    }

    Archive(OutputStream stream) {
        zip = new ZipOutputStream(stream, StandardCharsets.UTF_8);
    }

    void text(String name, String text) throws IOException {
        entry(name, stream -> stream.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    void entry(String name, Writing writing) throws IOException {
        start(name);
        MessageDigest digest = Hash.start();
        writing.to(new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                write(new byte[] {(byte) one}, 0, 1);
            }

            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                digest.update(bytes, from, length);
                zip.write(bytes, from, length);
            }
        });
        zip.closeEntry();
        sums.append(Hash.text(digest.digest())).append("  ").append(name).append('\n');
    }

    private void start(String name) throws IOException {
        zip.setLevel(Names.isPhoto(name) ? Deflater.NO_COMPRESSION : Deflater.DEFAULT_COMPRESSION);
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
    }

    void finish() throws IOException {
        start(Names.SUMS);
        zip.write(sums.toString().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
        zip.finish();
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
