package putback.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TrailTest {
    @Test
    void a_path_goes_from_the_top_of_the_sheet_to_the_place() {
        assertThat(Trail.of("joints", "top-nut").then("behind").then(0).then(2).path())
                .containsExactly("joints", "top-nut", "behind", "0", "2");
    }
}
