package putback.store.durability;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Programs that are killed, or that work side by side. {@code -Dputback.kills=500} asks for a longer run. */
@Tag("long")
class KillTest {
    private static final int KILLS = Integer.getInteger("putback.kills", 10);

    @TempDir
    private Path folder;

    @Test
    void afterEachKill_everyAcknowledgedRowIsThere() throws Exception {
        Path file = folder.resolve("garage.db");
        List<String> acknowledged = new ArrayList<>();
        for (int seed = 0; seed < KILLS; seed++) {
            Child child = Child.start(Map.of(), "books", file.toString(), seed + "-", "1000000", "700");
            child.read(1 + new Random(seed).nextInt(400));
            acknowledged.addAll(child.kill());
            Acknowledged.areAllThere(acknowledged, file, "kill " + seed);
        }
        assertThat(acknowledged).hasSizeGreaterThan(KILLS * 20);
    }

    @Test
    void twoProgramsInOneFile_loseNothing() throws Exception {
        Path file = folder.resolve("garage.db");
        Child.start(Map.of(), "books", file.toString(), "first-", "1", "10").end();
        Child one = Child.start(Map.of(), "books", file.toString(), "one-", "400", "200");
        Child other = Child.start(Map.of(), "books", file.toString(), "other-", "400", "200");
        List<String> acknowledged = new ArrayList<>(one.end());
        acknowledged.addAll(other.end());
        assertThat(acknowledged).hasSize(800).noneMatch(line -> line.contains(" "));
        Acknowledged.areAllThere(acknowledged, file, "side by side");
    }
}
