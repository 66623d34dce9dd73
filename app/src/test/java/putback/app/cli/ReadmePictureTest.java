package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The picture in the README is what the program draws now; {@code -Dputback.write=true} draws it anew. */
class ReadmePictureTest {
    private static final Path KEPT = Path.of("..", "docs", "pictures", "demo-ladder.svg");

    @TempDir
    private Path folder;

    @Test
    void theLadderInTheReadme_isTheProgramsOwn() throws Exception {
        Path drawn = folder.resolve("ladder.svg");
        Said.by("plan", "demo-van", "--renew", "spring,damper,pads", "--svg", drawn.toString());
        if (Boolean.getBoolean("putback.write")) {
            Files.writeString(KEPT, Files.readString(drawn));
        }
        assertThat(Files.readString(KEPT).equals(Files.readString(drawn)))
                .as("docs/pictures/demo-ladder.svg is as the program draws it; draw it anew with -Dputback.write=true")
                .isTrue();
    }
}
