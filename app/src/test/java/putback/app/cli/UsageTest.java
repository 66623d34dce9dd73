package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class UsageTest {
    private final Usage usage = new Usage(
            "weigh",
            "Weigh a part.",
            List.of("PART", "[PLACE]"),
            List.of(
                    Option.value("--at", "ANGLE", "how far it leans"),
                    Option.values("--with", "PART", "what else is on the scale"),
                    Option.flag("--json", "for other programs")));

    @Test
    void options_standBeforeBetweenAndAfterOperands() throws UsageFault {
        Arguments arguments = usage.read(List.of("--json", "strut", "--at", "3deg", "bench"));
        assertThat(arguments.operands()).containsExactly("strut", "bench");
        assertThat(arguments.has("--json")).isTrue();
        assertThat(arguments.value("--at")).contains("3deg");
    }

    @Test
    void value_mayFollowAnEqualsSignOrStartWithAHyphen() throws UsageFault {
        assertThat(usage.read(List.of("strut", "--at=-3deg")).value("--at")).contains("-3deg");
        assertThat(usage.read(List.of("strut", "--at", "-3deg")).value("--at")).contains("-3deg");
    }

    @Test
    void repeatedOption_keepsItsOrder() throws UsageFault {
        assertThat(usage.read(List.of("strut", "--with", "b", "--with", "a")).values("--with"))
                .containsExactly("b", "a");
    }

    @Test
    void afterTwoHyphens_everythingIsAnOperand() throws UsageFault {
        assertThat(usage.read(List.of("--", "--json")).operands()).containsExactly("--json");
    }

    @Test
    void help_isAskedForAnywhere() throws UsageFault {
        assertThat(usage.read(List.of("--at", "3deg", "--help")).wantsHelp()).isTrue();
        assertThat(usage.help("")).contains("Usage: putback weigh PART [PLACE]", "--at ANGLE");
    }

    @Test
    void noHelpIsWiderThanEightyColumns_andHelpPlanIsTheHelpOfPlan() {
        Said all = Said.by("--help");
        assertThat(all.out().lines()).allMatch(line -> line.length() <= 80);
        for (String line : all.out().split("\n", -1)) {
            if (line.matches("  [a-z]+ .*")) {
                String command = line.strip().split(" ", 2)[0];
                Said help = Said.by(command, "--help");
                assertThat(help.exit()).isEqualTo(Exit.DONE);
                assertThat(help.out().lines()).as(command).allMatch(row -> row.length() <= 80);
                assertThat(Said.by("help", command).out()).isEqualTo(help.out());
            }
        }
        assertThat(Said.by("help", "kitchen").err()).contains("there is no command \"kitchen\"");
    }

    @Test
    void misspeltOption_isToldItsNeighbour() {
        assertThatThrownBy(() -> usage.read(List.of("strut", "--jsn")))
                .isInstanceOf(UsageFault.class)
                .hasMessageContaining("Maybe --json");
    }

    @Test
    void whatIsMissingOrTooMuch_isNamed() {
        assertThatThrownBy(() -> usage.read(List.of())).hasMessageContaining("PART is missing");
        assertThatThrownBy(() -> usage.read(List.of("a", "b", "c"))).hasMessageContaining("\"c\"");
        assertThatThrownBy(() -> usage.read(List.of("a", "--at"))).hasMessageContaining("the value is missing");
        assertThatThrownBy(() -> usage.read(List.of("a", "--at", "--json")))
                .hasMessageContaining("the value is missing");
        assertThatThrownBy(() -> usage.read(List.of("a", "--at", "1", "--at", "2")))
                .hasMessageContaining("given twice");
        assertThatThrownBy(() -> usage.read(List.of("a", "--json=yes"))).hasMessageContaining("takes no value");
    }
}
