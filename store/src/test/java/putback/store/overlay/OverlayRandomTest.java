package putback.store.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.store.sheets.Piece;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** Overlays made by chance: what is written is read as it was, and the reader takes it. */
class OverlayRandomTest {
    private static final int TRIES = 400;
    private static final String SIGNS = "ab Z0:#'\"\\-?!&*|>%@`,[]{}~=.·°é車я\n\t";
    private static final Assembly STRUT = ((Read.Sheet) SheetReader.stock("front-strut")).assembly();

    @Test
    void anyText_comesBack_andStaysTheSame() {
        for (long seed = 0; seed < TRIES; seed++) {
            Random random = new Random(seed);
            Overlay overlay = new Overlay(entries(random, 0));
            String text = overlay.write();
            assertThat(Overlay.read("random", text))
                    .as("seed " + seed + "\n" + text)
                    .isEqualTo(new OverlayRead.Sound(overlay));
        }
    }

    @Test
    void anyFigures_areTakenByTheReader_andWrittenTheSameAgain() {
        for (long seed = 0; seed < TRIES; seed++) {
            Random random = new Random(seed);
            Overlay overlay = Overlay.on("car-1", "T " + word(random), List.of("front-strut"));
            for (int i = random.nextInt(12); i >= 0; i--) {
                overlay = changed(overlay, random);
            }
            String text = overlay.write();
            String said = "seed " + seed + "\n" + text;
            assertThat(SheetReader.text("random", text)).as(said).isInstanceOf(Read.Sheet.class);
            Overlay again = ((OverlayRead.Sound) Overlay.read("random", text)).overlay();
            assertThat(again).as(said).isEqualTo(overlay);
            assertThat(again.write()).as(said).isEqualTo(text);
        }
    }

    private static Overlay changed(Overlay overlay, Random random) {
        Joint joint = STRUT.joints().get(random.nextInt(STRUT.joints().size()));
        String side = List.of("", joint.side().prefix()).get(random.nextInt(2));
        String id = side + joint.entry().id();
        return switch (random.nextInt(5)) {
            case 0 ->
                overlay.with("joints", id, "torque", Piece.Text.of(1 + random.nextInt(200) + " N·m"))
                        .with("joints", id, "source", Piece.Text.of("s" + word(random)));
            case 1 -> overlay.with("joints", id, "hex", Piece.Text.of(8 + random.nextInt(20) + " mm"));
            case 2 -> overlay.with("joints", id, "once", new Piece.Text("true", false));
            case 3 ->
                overlay.with(
                        "joints",
                        id,
                        "hold",
                        Piece.Entries.NONE.with("key", Piece.Text.of(4 + random.nextInt(6) + " mm")));
            default -> overlay.with("joints", id, "condition", Piece.Text.of("oiled"));
        };
    }

    private static Piece piece(Random random, int depth) {
        int kind = random.nextInt(depth > 3 ? 2 : 4);
        return switch (kind) {
            case 0 -> new Piece.Text(word(random), true);
            case 1 -> new Piece.Text(List.of("true", "null", "12.5", "~", "").get(random.nextInt(5)), false);
            case 2 -> items(random, depth);
            default -> entries(random, depth + 1);
        };
    }

    private static Piece.Items items(Random random, int depth) {
        List<Piece> items = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            items.add(piece(random, depth + 1));
        }
        return new Piece.Items(items);
    }

    private static Piece.Entries entries(Random random, int depth) {
        Piece.Entries entries = depth == 0 ? Piece.Entries.NONE.with("sheet", Piece.Text.of("x")) : Piece.Entries.NONE;
        List<String> known = List.of("parts", "joints", "units", "resorts", "title", "odd");
        for (int i = random.nextInt(5); i > 0; i--) {
            String key = depth == 0 ? known.get(random.nextInt(known.size())) : "k" + word(random);
            entries = entries.with(key, piece(random, depth));
        }
        return entries;
    }

    private static String word(Random random) {
        StringBuilder word = new StringBuilder();
        for (int i = random.nextInt(9); i > 0; i--) {
            word.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        return word.toString();
    }
}
