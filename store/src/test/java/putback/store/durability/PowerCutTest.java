package putback.store.durability;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.store.database.SqliteDatabase;

/**
 * Every call by which SQLite touches the disk is recorded, in order, and the disk is then put together as a power cut may leave it at any
 * of these calls. {@code -Dputback.cuts=2000} asks for a longer run.
 */
@Tag("long")
class PowerCutTest {
    private static final int CUTS = Integer.getInteger("putback.cuts", 80);
    private static final int ROWS = 700;

    @TempDir
    private Path folder;

    private Path before;

    private DiskRecord recorded(String how) throws Exception {
        DiskShim shim = DiskShim.compile(folder);
        Path disk = Files.createDirectory(folder.resolve("disk"));
        Path file = disk.resolve("garage.db");
        SqliteDatabase.open(file).close();
        before = copy(disk);
        Path log = folder.resolve("log");
        Child.start(shim.recording(disk, log), how, file.toString(), "row-", String.valueOf(ROWS), "4000")
                .end();
        return DiskRecord.read(log);
    }

    private Path copy(Path disk) throws IOException {
        Path copy = Files.createDirectory(folder.resolve("before"));
        try (Stream<Path> files = Files.list(disk)) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        return copy;
    }

    /** The books as they are found after a cut before that operation. */
    private Path cut(DiskRecord record, int at, int seed) throws IOException {
        CutDisk disk = new CutDisk(before);
        disk.run(record.operations().subList(0, at));
        Path found = Files.createDirectory(folder.resolve("cut-" + seed));
        disk.cut(found, new Random(seed));
        return found.resolve("garage.db");
    }

    @Test
    void whereverThePowerIsCut_everyAcknowledgedRowIsThere() throws Exception {
        DiskRecord record = recorded("books");
        assertThat(record.acknowledged(record.operations().size())).hasSize(ROWS);
        assertThat(record.operations())
                .as("the log was folded into the file")
                .anyMatch(one -> one.what() == 'w' && one.name().equals("garage.db"));
        int most = 0;
        for (int seed = 0; seed < CUTS; seed++) {
            int at = new Random(-seed).nextInt(record.operations().size() + 1);
            List<String> acknowledged = record.acknowledged(at);
            most = Math.max(most, acknowledged.size());
            Acknowledged.areAllThere(
                    acknowledged, cut(record, at, seed), "seed " + seed + ", cut before operation " + at);
        }
        assertThat(most).isGreaterThan(ROWS / 2);
    }

    /** Were this to find nothing, the test above would prove nothing. */
    @Test
    void aProgramThatDoesNotSync_isFoundOut() throws Exception {
        DiskRecord record = recorded("without-syncing");
        int lost = 0;
        for (int seed = 0; seed < 12; seed++) {
            int at = record.operations().size() * (seed + 1) / 13;
            List<String> acknowledged = record.acknowledged(at);
            lost += acknowledged.size() - found(cut(record, at, seed), acknowledged);
        }
        assertThat(lost).isPositive();
    }

    private static int found(Path file, List<String> acknowledged) {
        try {
            Set<String> kept = Acknowledged.kept(file, "careless");
            return (int) acknowledged.stream().filter(kept::contains).count();
        } catch (RuntimeException | AssertionError damaged) {
            return 0;
        }
    }
}
