package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What a start has to load. */
class LoadedTest {
    @Test
    void planWithoutAPaper_loadsNothingThatMakesPapers() throws IOException {
        String loaded = loaded("plan", "front-brake", "--renew", "pads");
        assertThat(loaded).contains("putback.app.cli.PlanCommand ", "putback.app.text.PlanText ");
        assertThat(loaded).doesNotContain("putback.app.papers.", "openhtmltopdf", "pdfbox", "zxing", " gg.jte.");
    }

    private static String loaded(String... words) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load",
                "-cp",
                System.getProperty("java.class.path"),
                "putback.app.Main");
        builder.command().addAll(java.util.List.of(words));
        Process process = builder.redirectErrorStream(true).start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
}
