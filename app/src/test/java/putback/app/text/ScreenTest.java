package putback.app.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class ScreenTest {
    private static final Map<String, String> COLOURED = Map.of("TERM", "xterm-256color");

    @Test
    void pipe_is80WideWithoutColour_whateverTheEnvironmentSays() {
        assertThat(Screen.of(Map.of("TERM", "xterm", "COLUMNS", "200"), false, "50 200"))
                .isEqualTo(new Screen(80, false, false));
    }

    @Test
    void terminal_saysItsWidth_andColumnsGoesBeforeIt() {
        assertThat(Screen.of(COLOURED, true, "50 101").width()).isEqualTo(101);
        assertThat(Screen.of(Map.of("COLUMNS", "66"), true, "50 101").width()).isEqualTo(66);
    }

    @Test
    void width_isReadable_whateverIsSaid() {
        assertThat(Screen.of(COLOURED, true, "").width()).isEqualTo(80);
        assertThat(Screen.of(COLOURED, true, "nonsense").width()).isEqualTo(80);
        assertThat(Screen.of(COLOURED, true, "0 0").width()).isEqualTo(80);
        assertThat(Screen.of(COLOURED, true, "1 3").width()).isEqualTo(40);
        assertThat(Screen.of(COLOURED, true, "9 999").width()).isEqualTo(120);
    }

    @Test
    void colour_isOnlyForTerminalsThatHaveIt_andNobodyRefused() {
        assertThat(Screen.of(COLOURED, true, "").colour()).isTrue();
        assertThat(Screen.of(Map.of("TERM", "dumb"), true, "").colour()).isFalse();
        assertThat(Screen.of(Map.of(), true, "").colour()).isFalse();
        assertThat(Screen.of(Map.of("TERM", "xterm", "NO_COLOR", "1"), true, "").colour())
                .isFalse();
    }

    @Test
    void letters_areAsciiWhereTheLocaleIsSetAndNotUtf8() {
        assertThat(Screen.of(Map.of(), false, "").ascii()).isFalse();
        assertThat(Screen.of(Map.of("LANG", "C"), false, "").ascii()).isTrue();
        assertThat(Screen.of(Map.of("LANG", "POSIX"), false, "").ascii()).isTrue();
        assertThat(Screen.of(Map.of("LANG", "C.UTF-8"), false, "").ascii()).isFalse();
        assertThat(Screen.of(Map.of("LANG", "de_DE.utf8"), false, "").ascii()).isFalse();
        assertThat(Screen.of(Map.of("LANG", "en_GB.UTF-8", "LC_ALL", "C"), false, "")
                        .ascii())
                .isTrue();
        assertThat(Screen.of(Map.of("LANG", "C", "LC_ALL", "C.UTF-8"), false, "")
                        .ascii())
                .isFalse();
    }
}
