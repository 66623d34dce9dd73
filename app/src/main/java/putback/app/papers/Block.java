package putback.app.papers;

import java.util.ArrayList;
import java.util.List;

/** A piece of a paper, from top to bottom. */
public sealed interface Block {
    /** A heading; what follows stays on its page. */
    record Heading(String text) implements Block {}

    /** Sentences, each a paragraph of its own. */
    record Words(List<String> sentences, boolean marked) implements Block {
        public Words {
            sentences = List.copyOf(sentences);
        }

        /** Plain paragraphs. */
        public static Words of(String... sentences) {
            return new Words(List.of(sentences), false);
        }
    }

    /** What must not be overlooked, set in a frame. */
    record Framed(String title, List<String> sentences) implements Block {
        public Framed {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * A table. Its head is repeated on each page, and no row is divided.
     *
     * @param tight rows close together, for reading; otherwise with room for a pen
     */
    record Table(List<Column> columns, List<Row> rows, boolean tight) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }

        /** Whether a row stays with the one after it: words across are nothing by themselves. */
        private boolean leads(int row) {
            return rows.get(row) instanceof Row.Across && row + 1 < rows.size();
        }

        /** Whether a row is the first of those that stay on one page. */
        public boolean startsGroup(int row) {
            return row == 0 || !leads(row - 1);
        }

        /** Whether it is the last of them. */
        public boolean endsGroup(int row) {
            return !leads(row);
        }

        /** The cell of a row, empty where the row is shorter. */
        public Cell cell(Row row, int column) {
            List<Cell> cells = row.cells();
            return column < cells.size() ? cells.get(column) : Cell.EMPTY;
        }
    }

    /**
     * A column of a table.
     *
     * @param percent of the table's width
     * @param figures whether it holds numbers, set to the right
     */
    record Column(String head, int percent, boolean figures) {}

    /** A row of a table. */
    sealed interface Row {
        /** From left to right; none where words run across. */
        List<Cell> cells();

        /** One cell for each column. */
        record Cells(List<Cell> cells) implements Row {
            public Cells {
                cells = List.copyOf(cells);
            }

            public static Cells of(Cell... cells) {
                return new Cells(List.of(cells));
            }
        }

        /** Words across all columns: where one goes, or how the car stands. */
        record Across(String text) implements Row {
            @Override
            public List<Cell> cells() {
                return List.of();
            }
        }

        /** A sum, in bold. */
        record Sum(List<Cell> cells) implements Row {
            public Sum {
                cells = List.copyOf(cells);
            }
        }
    }

    /**
     * A drawing on a page of its own.
     *
     * @param svg complete
     * @param said what it shows, for those who do not see it
     */
    record Picture(String svg, String said, double widthMm, double heightMm) implements Block {
        /** The drawing as wide and high as it is printed, with its words for those who do not see it. */
        public String sized() {
            int at = svg.indexOf("<svg ") + 5;
            String size = "alt=\"" + Printable.escaped(said) + "\" style=\"width:" + widthMm + "mm;height:" + heightMm
                    + "mm\" ";
            return svg.substring(0, at) + size + svg.substring(at);
        }
    }

    /** Named fields, two side by side; one without a value is a line to write on. */
    record Fields(List<Field> fields) implements Block {
        public Fields {
            fields = List.copyOf(fields);
        }

        /** Two by two. */
        public List<List<Field>> rows() {
            List<List<Field>> rows = new ArrayList<>();
            for (int at = 0; at < fields.size(); at += 2) {
                rows.add(fields.subList(at, Math.min(at + 2, fields.size())));
            }
            return rows;
        }
    }

    /**
     * One of them.
     *
     * @param value empty for a line to write on
     */
    record Field(String label, String value) {
        /** Its value, or room for a pen. */
        public String written() {
            return value.isEmpty() ? "\u00a0" : value;
        }
    }

    /** What the shapes in the tables of steps mean. */
    record Legend() implements Block {}

    /** What follows is a card to be cut off; it stays in one piece, so on the next page where this one has no room for it. */
    record Cut() implements Block {}

    /** What follows starts on a new page. */
    record NewPage() implements Block {}
}
