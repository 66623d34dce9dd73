package putback.app.text;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.AngleJob;
import putback.angles.adjusting.Turned;
import putback.angles.meaning.Pointer;

/** Wheel angles and what to turn, for a person. */
public final class AnglesText {
    private final StringBuilder text = new StringBuilder(2000);
    private final AnglesReport report;

    private AnglesText(AnglesReport report) {
        this.report = report;
    }

    /** A table, what to turn, what comes of it, what has to be said. */
    public static String of(AngleJob job, Turned turned) {
        AnglesText text = new AnglesText(AnglesReport.of(job, turned));
        text.table();
        text.turning();
        text.paragraph(text.report.notes());
        text.pointers();
        return text.text.toString();
    }

    /** Never a verdict: what a sign may come from. */
    private void pointers() {
        if (!report.pointers().isEmpty()) {
            text.append("\nAs read, before anything is turned:\n");
        }
        for (Pointer pointer : report.pointers()) {
            RowText.wrapped(text, "- ", pointer.text());
        }
    }

    private void paragraph(List<String> lines) {
        if (!lines.isEmpty()) {
            text.append('\n');
        }
        for (String line : lines) {
            RowText.wrapped(text, "", line);
        }
    }

    private void table() {
        text.append(report.title().isEmpty() ? "Wheel angles" : report.title())
                .append(", degrees (degrees and minutes).\nTop out, toe in, top rearward positive.\n\n");
        text.append("                      left             right\n");
        for (AnglesReport.Row row : report.rows()) {
            row(row);
        }
        if (!report.facts().isEmpty()) {
            text.append('\n');
        }
        for (String fact : report.facts()) {
            text.append(fact).append('\n');
        }
        paragraph(report.gauge().isEmpty() ? List.of() : List.of(report.gauge()));
    }

    private void row(AnglesReport.Row row) {
        text.append(row.name()).append(" ".repeat(Math.max(1, 14 - row.name().length())));
        cell(row.left());
        cell(row.right());
        Double both = row.both();
        if (both != null) {
            text.append("  ").append(row.joint()).append(' ').append(AngleFigures.column(both));
        }
        if (!row.millimetres().isEmpty()) {
            text.append("\n").append(" ".repeat(51)).append("= ").append(row.millimetres());
        }
        text.append('\n');
    }

    private void cell(@Nullable Double degrees) {
        text.append("  ").append(degrees == null ? "        not read" : AngleFigures.column(degrees));
    }

    private void turning() {
        if (!report.adjustable()) {
            goals("\nAgainst what is wanted:\n");
            return;
        }
        text.append("\nWhat to turn, in this order:\n");
        for (String one : report.turning()) {
            RowText.wrapped(text, "  ", one);
        }
        if (report.turning().isEmpty()) {
            text.append("  nothing: leave all of it as it is\n");
        }
        text.append('\n');
        if (!report.straight().isEmpty()) {
            text.append(report.straight()).append('\n');
        }
        goals("\nThe readings become:\n");
        for (String total : report.totals()) {
            text.append("  ").append(total).append('\n');
        }
    }

    private void goals(String title) {
        text.append(report.goals().isEmpty() ? "" : title);
        for (AnglesReport.Goal goal : report.goals()) {
            Double value = goal.after();
            String name = "  " + goal.name();
            text.append(name).append(" ".repeat(Math.max(1, 34 - name.length())));
            text.append(value == null ? "not read" : AngleFigures.column(value)).append("  wanted ");
            text.append(goal.range())
                    .append(value == null ? "" : ", " + goal.verdict())
                    .append('\n');
        }
    }
}
