package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PersonCommandTest {
    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Terminal terminal = new Terminal(
            new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));

    private int person(String typed, String... words) throws UsageFault {
        Command command = new PersonCommand(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--data", folder.toString()));
        return command.run(command.usage().read(all), terminal);
    }

    @Test
    void anOwner_isAdded_listed_andGetsAnotherPassword() throws Exception {
        assertThat(person("four wheels\n", "add", "Ilva Brand", "--role", "owner"))
                .isEqualTo(Exit.DONE);
        assertThat(person("", "list")).isEqualTo(Exit.DONE);
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("Ilva Brand may sign in as owner", "Ilva Brand  owner");
        assertThat(person("five wheels\n", "password", "ilva brand")).isEqualTo(Exit.DONE);
        assertThat(out.toString(StandardCharsets.UTF_8)).doesNotContain("four wheels", "five wheels");
    }

    @Test
    void aShortPassword_aNameTwice_andNobody_areRefused() throws Exception {
        assertThat(person("short\n", "add", "Ilva Brand")).isEqualTo(Exit.BAD_INPUT);
        assertThat(person("four wheels\n", "add", "Ilva Brand")).isEqualTo(Exit.DONE);
        assertThat(person("four wheels\n", "add", "Ilva Brand")).isEqualTo(Exit.BAD_INPUT);
        assertThat(person("four wheels\n", "password", "Tom")).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains(
                        "has 5 characters",
                        "there is somebody called Ilva Brand already",
                        "there is nobody called Tom");
    }

    @Test
    void servingTheNetwork_wantsAnOwnerFirst() throws Exception {
        Command serve = new ServeCommand();
        int exit = serve.run(serve.usage().read(List.of("--lan", "--data", folder.toString())), terminal);
        assertThat(exit).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("putback person add NAME --role owner");
    }

    @Test
    void severalGarages_keepTheirPeopleApart_inOneFile() throws UsageFault {
        assertThat(person("four wheels\n", "add", "Ilva Brand", "--garage", "quay-street"))
                .isEqualTo(Exit.DONE);
        assertThat(person("four wheels\n", "add", "Ilva Brand", "--garage", "quay-street"))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(person("four wheels\n", "add", "Ilva Brand", "--garage", "hill-top"))
                .isEqualTo(Exit.DONE);
        assertThatThrownBy(() -> person("", "list", "--garage", "../x")).hasMessageContaining("such as quay-street");
    }
}
