package putback.app.papers;

import java.util.List;

/**
 * One field of a table.
 *
 * @param mark a shape before the words
 * @param text its main words; may be empty
 * @param below smaller lines under them
 * @param cautions for the hand, set off from the rest
 */
public record Cell(Mark mark, String text, List<String> below, List<String> cautions) {
    /** Shapes carry what is meant, so that a copier loses nothing. */
    public enum Mark {
        NONE(""),
        /** An empty hole: open. */
        OPEN("open"),
        /** Broken loose. */
        LOOSE("loose"),
        /** A nut on its thread. */
        STARTED("started"),
        /** Down on its face. */
        TIGHT("tight"),
        /** Seen a second time. */
        TWICE("twice"),
        /** A box to tick. */
        BOX("box");

        private final String word;

        Mark(String word) {
            this.word = word;
        }

        /** Its name in the style sheet; empty for nothing. */
        public String word() {
            return word;
        }
    }

    /** Nothing printed: to be written in by hand. */
    public static final Cell EMPTY = new Cell(Mark.NONE, "", List.of(), List.of());

    /** A box to tick. */
    public static final Cell TICK = new Cell(Mark.BOX, "", List.of(), List.of());

    public Cell {
        below = below.stream().filter(line -> !line.isEmpty()).toList();
        cautions = List.copyOf(cautions);
    }

    public static Cell of(String text) {
        return new Cell(Mark.NONE, text, List.of(), List.of());
    }

    public static Cell of(String text, List<String> below) {
        return new Cell(Mark.NONE, text, below, List.of());
    }

    public static Cell of(Mark mark, String text, List<String> below) {
        return new Cell(mark, text, below, List.of());
    }

    public static Cell of(Mark mark) {
        return new Cell(mark, "", List.of(), List.of());
    }
}
