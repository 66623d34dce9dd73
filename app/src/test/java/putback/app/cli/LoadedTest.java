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

    /** No lambda, no joined string and no comparison of records that Java would make up anew at each start. */
    @Test
    void plan_runsNoGeneratedCode() throws IOException {
        for (String job : new String[] {"front-strut complete-strut", "front-strut arm", "twist-beam spring,damper"}) {
            String[] words = job.split(" ", -1);
            assertThat(loaded("plan", words[0], "--renew", words[1]))
                    .contains("putback.app.text.PlanFoot ")
                    .doesNotContain("LambdaForm$MH/", "java.lang.runtime.ObjectMethods", "$$Lambda$");
        }
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
