package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Spoils a sheet at random, by bytes, by words and by lines. Whatever comes out is read without an exception into a sheet
 * or into faults that point into the file. What the work can grow to is bounded by counts, asserted below, not by a clock.
 */
class SheetRandomTest {
    private static final int RUNS = 3000;
    private static final long FIRST_SEED = Long.getLong("seed", 1);
    private static final String[] WORDS = {
        "null",
        "~",
        "true",
        "yes",
        "-1",
        "1e999",
        ".nan",
        "98 N·m",
        "12 mm",
        "body",
        "other.strut",
        "left.strut",
        "[]",
        "{}",
        "[[]]",
        "{a: b}",
        "&a",
        "*a",
        "!!str",
        "<<",
        "''",
        "\"",
        "'",
        "|",
        ">",
        "- ",
        "? ",
        ": ",
        "#",
        "%",
        "@",
        "`",
        "\t",
        "\u0000",
        "\u00a0",
        "\ud83d\ude00",
        "x".repeat(200),
        "snug",
        "on wheels",
        "torque",
        "left.",
        "{",
        "}",
        "[",
        "]",
        ","
    };

    @Test
    void a_spoilt_sheet_is_read_or_refused_with_places_inside_the_file() {
        String whole = Sheets.everything();
        int sound = 0;
        for (long seed = FIRST_SEED; seed < FIRST_SEED + RUNS; seed++) {
            byte[] spoilt = spoilt(whole, new Random(seed));
            sound += isSound(spoilt, seed) ? 1 : 0;
        }
        assertThat(sound)
                .as("some survive, so that the checks of sound sheets ran")
                .isPositive();
        assertThat(sound).as("most do not, so that the checks of faults ran").isLessThan(RUNS / 2);
    }

    @Test
    void what_is_composed_is_bounded_whatever_is_multiplied() {
        for (long seed = FIRST_SEED; seed < FIRST_SEED + 300; seed++) {
            Faults faults = new Faults();
            Node top = Composer.compose("f", multiplied(new Random(seed)), faults);
            assertThat(top == null ? 0 : size(top)).as("seed %d", seed).isLessThanOrEqualTo(Composer.MOST_NODES);
            assertThat(top == null).as("seed %d", seed).isEqualTo(!faults.isEmpty());
        }
    }

    private static boolean isSound(byte[] spoilt, long seed) {
        Read read;
        try {
            read = read(spoilt);
        } catch (RuntimeException | StackOverflowError thrown) {
            throw new AssertionError("seed " + seed + " makes the reader throw", thrown);
        }
        if (read instanceof Read.Faulty faulty) {
            String text = new String(spoilt, StandardCharsets.UTF_8);
            List<String> lines = lines(text.startsWith("\uFEFF") ? text.substring(1) : text);
            assertThat(faulty.faults()).as("seed %d", seed).isNotEmpty().isSorted();
            for (Fault fault : faulty.faults()) {
                assertThat(fault.line()).as("seed %d: %s", seed, fault).isBetween(1, lines.size());
                assertThat(fault.column())
                        .as("seed %d: %s", seed, fault)
                        .isBetween(1, 1 + lines.get(fault.line() - 1).length());
                assertThat(fault.toString())
                        .as("seed %d", seed)
                        .doesNotContain("\n", "\u001b")
                        .hasSizeLessThan(700);
            }
        }
        return read instanceof Read.Sheet;
    }

    private static Read read(byte[] bytes) {
        Faults faults = new Faults();
        String decoded = SourceText.decoded(bytes, "sheet.yaml", Form.SHEET, faults);
        String text = decoded == null ? null : SourceText.printable(decoded, "sheet.yaml", Form.SHEET, faults);
        Node.Entries top = text == null ? null : Composer.compose("sheet.yaml", text, faults);
        if (top == null) {
            return new Read.Faulty(faults.sorted());
        }
        Node.Entries merged = new Merger(faults).sheets(Node.Entries.none(top.place()), top);
        return new Building(new Bases.Loaded(merged, true, new Removals()), "sheet.yaml", faults).build();
    }

    static byte[] spoilt(String whole, Random random) {
        String text = whole;
        for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
            text = switch (random.nextInt(5)) {
                case 0 -> swappedLines(text, random);
                case 1 -> withoutSpan(text, random);
                case 2 -> withWord(text, random);
                case 3 -> wordSwapped(text, random);
                default -> text;
            };
        }
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(4) == 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    private static String swappedLines(String text, Random random) {
        List<String> lines = new ArrayList<>(lines(text));
        int from = random.nextInt(lines.size());
        lines.add(random.nextInt(lines.size()), random.nextBoolean() ? lines.get(from) : lines.remove(from));
        return String.join("\n", lines);
    }

    private static String withoutSpan(String text, Random random) {
        int from = random.nextInt(text.length());
        int to = Math.min(text.length(), from + 1 + random.nextInt(30));
        return text.substring(0, from) + text.substring(to);
    }

    private static String withWord(String text, Random random) {
        int at = random.nextInt(text.length());
        return text.substring(0, at) + WORDS[random.nextInt(WORDS.length)] + text.substring(at);
    }

    /** Puts a strange word where a value of the sheet was. */
    private static String wordSwapped(String text, Random random) {
        int colon = text.indexOf(": ", random.nextInt(text.length()));
        if (colon < 0) {
            return text;
        }
        int end = colon + 2;
        while (end < text.length() && ",}]\n".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return text.substring(0, colon + 2) + WORDS[random.nextInt(WORDS.length)] + text.substring(end);
    }

    private static String multiplied(Random random) {
        StringBuilder text = new StringBuilder("k0: &a0 [x]\n");
        int lines = 1 + random.nextInt(12);
        for (int i = 1; i <= lines; i++) {
            int before = random.nextInt(i);
            String alias = random.nextBoolean() ? "*a" + before + " " : "{y: *a" + before + " }";
            text.append("k").append(i).append(": &a").append(i).append(" [");
            text.append((alias + ",").repeat(random.nextInt(12))).append("z]\n");
        }
        return text.toString();
    }

    private static int size(Node node) {
        if (node instanceof Node.Items items) {
            return 1 + items.items().stream().mapToInt(SheetRandomTest::size).sum();
        }
        if (node instanceof Node.Entries entries) {
            return 1
                    + entries.byKey().values().stream()
                            .mapToInt(entry -> 1 + size(entry.value()))
                            .sum();
        }
        return 1;
    }

    private static List<String> lines(String text) {
        return List.of(text.split("\r\n|\n|\r", -1));
    }
}
