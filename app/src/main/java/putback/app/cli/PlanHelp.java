package putback.app.cli;

import putback.sheet.JointKind;

/** What the help of {@code plan} says below its options. */
final class PlanHelp {
    private static final int COLUMN = 12;

    private PlanHelp() {}

    /** With the table of minutes that are assumed where a sheet gives none. */
    static String text() {
        StringBuilder text = new StringBuilder(1500);
        text.append("""
                SHEET is a file or the id of a stock sheet. In a sheet with sides a plain name
                means both unless --side says which; left.strut is one of them.

                --json, --pdf, --svg and --why each replace the text; give one. Colour is left
                out where the output is no terminal or NO_COLOR is set.

                Rust and hands never change what is opened. The minutes of the steps are for clean
                fasteners and one pair of hands; a last line says what the whole comes to with
                --rust and --hands, and putback price says more.

                Exit codes: 0 done, 2 wrong input, 3 there is no sound order, 1 anything else.

                Minutes for one fastener where the sheet gives none (common practice):

                """);
        text.append("  kind        open   close\n");
        for (JointKind kind : JointKind.values()) {
            String open = kind.defaultOpen().decimal().toPlainString();
            String close = kind.defaultClose().decimal().toPlainString();
            text.append("  ")
                    .append(kind.word())
                    .append(" ".repeat(COLUMN - kind.word().length()));
            text.append(open)
                    .append(" ".repeat(COLUMN - 5 - open.length()))
                    .append(close)
                    .append('\n');
        }
        return text.toString();
    }
}
