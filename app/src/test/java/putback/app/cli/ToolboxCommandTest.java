package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import putback.app.json.JsonTree;

class ToolboxCommandTest {
    @Test
    void aDroppedWrench_isDue_andTheOthersAreGoodUntilADay() {
        Said ran = Said.by("toolbox", "demo", "--on", "2026-11-02");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("DUE: dropped 2026-08-14", "good until 2027-03-08, or for 870 more operations")
                .contains("taken from ISO 6789, not stated");
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void sameDay_sameBytes_andAYearLater_allAreDue() {
        assertThat(Said.by("toolbox", "demo", "--on", "2026-11-02").out())
                .isEqualTo(Said.by("toolbox", "demo", "--on", "2026-11-02").out());
        assertThat(Said.by("toolbox", "demo", "--on", "2027-11-02").out()).doesNotContain("good until");
    }

    @Test
    void badInput_isRefusedInALine() {
        assertThat(Said.by("toolbox", "no-such.yaml").exit()).isEqualTo(Exit.BAD_INPUT);
        Said day = Said.by("toolbox", "demo", "--on", "2.11.2026");
        assertThat(day.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(day.err()).startsWith("putback toolbox: --on is a day such as 2026-02-11, not \"2.11.2026\"");
        assertThat(Said.by("plan", "front-strut", "--renew", "strut", "--on", "2026-01-01")
                        .err())
                .contains("--on goes with --toolbox");
    }

    @Test
    void plan_carriesWrenchSettingAndWindow() {
        Said ran = Said.by(
                "plan",
                "front-strut",
                "--renew",
                "strut",
                "--side",
                "left",
                "--toolbox",
                "demo",
                "--on",
                "2026-11-02",
                "--json");
        Map<?, ?> json = (Map<?, ?>) JsonTree.read(ran.out());
        Map<?, ?> step = ((java.util.List<?>) json.get("steps"))
                .stream()
                        .map(one -> (Map<?, ?>) one)
                        .filter(one -> "left.wheel-nuts".equals(one.get("joint")) && "tighten".equals(one.get("do")))
                        .findFirst()
                        .orElseThrow();
        Map<?, ?> wrench = (Map<?, ?>) step.get("wrench");
        assertThat(wrench.get("id")).isEqualTo("W3");
        assertThat(String.valueOf(wrench.get("settingNm"))).startsWith("104");
        assertThat(step.get("windowNm").toString()).contains("94.5", "115.5");
    }
}
