package putback.app.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.app.text.Page.Ink;
import putback.quantity.Length;
import putback.quantity.Torque;
import putback.tightening.toolbox.Kept;
import putback.tightening.toolbox.Owned;
import putback.tightening.toolbox.Toolbox;
import putback.tightening.toolbox.TorqueWrench;

/** A toolbox for a person: the wrenches first, since they go out of date. */
public final class ToolboxText {
    private final Toolbox toolbox;
    private final Page page;

    private ToolboxText(Toolbox toolbox, Page page) {
        this.toolbox = toolbox;
        this.page = page;
    }

    /**
     * @param on the day by which calibration is judged
     */
    public static String of(Toolbox toolbox, LocalDate on, Screen screen) {
        return new ToolboxText(toolbox, new Page(screen)).write(on);
    }

    private String write(LocalDate on) {
        page.words(Ink.STRONG, toolbox.title());
        page.gap().heading("TORQUE WRENCHES ON " + on, "");
        if (toolbox.wrenches().isEmpty()) {
            page.words(Ink.PLAIN, "  ", "none: every tightening will be one without a figure");
        }
        for (TorqueWrench wrench : toolbox.wrenches()) {
            wrench(wrench, wrench.upkeep().due(on, toolbox.interval()));
        }
        sized();
        named("OTHER TOOLS", toolbox.kept());
        named("AIDS", toolbox.aids());
        return page.toString();
    }

    private void wrench(TorqueWrench wrench, List<String> due) {
        StringBuilder line = new StringBuilder(wrench.text() + ": " + wrench.rangeText());
        if (wrench.step() != null) {
            line.append(", marks every ").append(wrench.step().text());
        }
        line.append(", deviation ")
                .append(Torque.figure(100 * wrench.deviation()))
                .append(" %");
        line.append(wrench.deviationStated() ? "" : " taken from ISO 6789, not stated");
        if (wrench.drive() != null) {
            line.append(", drive ").append(wrench.drive().acrossFlats());
        }
        page.words(Ink.PLAIN, "  ", line.toString());
        LocalDate until = wrench.upkeep().goodUntil(toolbox.interval());
        page.words(
                due.isEmpty() ? Ink.PLAIN : Ink.OCHRE,
                "      ",
                due.isEmpty()
                        ? "good until " + until + ", or for "
                                + (toolbox.interval().operations()
                                        - wrench.upkeep().operations())
                                + " more operations"
                        : "DUE: " + String.join("; ", due));
    }

    private void sized() {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        for (Owned owned : toolbox.tools()) {
            Length drive = owned.drive();
            String row = owned.tool().form().word() + (drive == null ? "" : ", drive " + drive.acrossFlats());
            rows.computeIfAbsent(row, name -> new ArrayList<>())
                    .add(owned.tool().size().acrossFlats());
        }
        if (!rows.isEmpty()) {
            page.gap().heading("BY SIZE", "");
        }
        for (Map.Entry<String, List<String>> row : rows.entrySet()) {
            page.words(Ink.PLAIN, "  ", row.getKey() + ": " + String.join(", ", row.getValue()));
        }
    }

    private void named(String heading, List<Kept> all) {
        if (all.isEmpty()) {
            return;
        }
        page.gap().heading(heading, "");
        for (Kept one : all) {
            String count = one.count() == 1 ? "" : one.count() + " x ";
            page.words(Ink.PLAIN, "  ", count + one.name() + (one.remark().isEmpty() ? "" : ", " + one.remark()));
        }
    }
}
