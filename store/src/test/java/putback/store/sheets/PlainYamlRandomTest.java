package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The plain reader against the full one: where it answers at all, it gives the same nodes at the same places. */
class PlainYamlRandomTest {
    private static final int RUNS = 6000;

    @Test
    void stock_sheets_and_the_sheet_with_every_key_are_plain() {
        assertThat(PlainYaml.compose("f", Sheets.everything())).isNotNull();
        for (String id : SheetReader.stockIds()) {
            String text = Objects.requireNonNull(new Origin.OfStock(id).text(new Faults()));
            assertThat(agree(text, id)).as(id).isTrue();
        }
    }

    @Test
    void random_sheets_are_read_alike() {
        for (long seed = 1; seed <= 300; seed++) {
            assertThat(agree(RandomSheet.of(seed), "seed " + seed)).isTrue();
        }
    }

    @Test
    void spoilt_sheets_are_read_alike_or_left_to_the_full_reader() {
        int plain = 0;
        String[] sheets = {Sheets.everything(), Sheets.SMALL, RandomSheet.of(7), blocks()};
        for (long seed = 1; seed <= RUNS; seed++) {
            String sheet = sheets[(int) (seed % sheets.length)];
            String spoilt = new String(SheetRandomTest.spoilt(sheet, new Random(seed)), StandardCharsets.UTF_8);
            plain += agree(spoilt, "seed " + seed) ? 1 : 0;
        }
        assertThat(plain).as("enough stay plain to compare").isBetween(RUNS / 10, RUNS - RUNS / 10);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a: b",
                "a: b # c",
                "a: b#c",
                "a:",
                "a:\nb: c",
                "a: # c\n  b: c",
                "a:\n- b\n- c\nd: e",
                "a:\n  - b: 1\n    c: 2\n  - d",
                "a: [b, c]",
                "a: [b,\n  c]",
                "a: {b: c, d: [e]}",
                "a: {b: [ ], c: { }}",
                "a: 'it''s'",
                "a: \"x: y\"",
                "a: -0.5 deg",
                "a: x:y",
                "a: (b)",
                "a:   b   ",
                "{\"a\": 1, \"b\": [true]}",
                "a: ~",
                "a: null",
                "a: [b] # c",
                "# c\n\n  # d\na: b\n\n",
                "a:\n    b:\n        c: d\n    e: f",
                "a: \u00b0\u00b7",
                "a: b.c_d-e",
                "a.b: c",
                "1: 2",
                "a: [-1, 'x', \"y\"]",
                "a: b [c]"
            })
    void plain_spellings_are_read_alike(String text) {
        assertThat(agree(text, text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "a",
                "- a",
                "a: b\n c",
                "a: 'b\n  c'",
                "a: &b c",
                "a: *b",
                "a: |\n  b",
                "a: >\n  b",
                "a: !!str b",
                "? a\n: b",
                "a: b: c",
                "a: b:",
                "a: \"\\n\"",
                "a: [b",
                "a: [b, ]",
                "a: {b}",
                "a: {b: }",
                "a: {b:c}",
                "a: [b c\n  d]",
                "a: 1\na: 2",
                "a: {b: 1, b: 2}",
                "---\na: b",
                "a: b\n---\nc: d",
                "%YAML 1.2\n---\na: b",
                "a:\tb",
                "a: b\r\nc: d",
                "a: @b",
                "a: `b",
                "a: %b",
                "a: - b",
                "a:\n - - b",
                "a: [\nb]",
                "a:\n  b: c\n d: e",
                " a: b",
                "a: \ud83d\ude00",
                "a: b\u0085c",
                "<<: {a: b}",
                "a: [b #c\n  ]x",
                "a: [b:c]",
                "a: 'b'c",
                "a: ,b",
                "a: \u2028",
                "\"a\": b",
                "a: \u0000"
            })
    void what_is_not_plain_is_left_to_the_full_reader(String text) {
        assertThat(PlainYaml.compose("f", text)).isNull();
    }

    /** Whether the plain reader answered; if so, as the full one does. */
    private static boolean agree(String text, String as) {
        Node.Entries plain = PlainYaml.compose("f", text);
        if (plain != null) {
            Faults faults = new Faults();
            Node.Entries full = Composer.compose("f", text, faults);
            assertThat(plain).as("%s\n%s", as, text).isEqualTo(full);
            assertThat(faults.isEmpty()).as("%s\n%s", as, text).isTrue();
            assertThat(String.valueOf(plain)).as("in the same order").isEqualTo(String.valueOf(full));
        }
        return plain != null;
    }

    /** The same things as blocks, with comments and blank lines between. */
    private static String blocks() {
        return """
                # A corner
                sheet: blocks   # its id
                title: 'It''s in blocks'
                parts:
                  wheel:
                    name: "Wheel: front"
                    prepare:
                    - compare with the old one

                    - clean
                  hub: {}
                joints:
                  nuts:
                    joins:
                      - wheel
                      - hub
                    kind: nut
                    # how tight
                    torque:
                      torque: 98 N·m
                      angle: 90 deg
                    behind: [wheel,
                      [hub,
                       wheel]]
                    lets-go:
                      - part: hub
                        aid: strap
                      - {part: wheel, aid: jack}
                """;
    }
}
