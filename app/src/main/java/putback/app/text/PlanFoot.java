package putback.app.text;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.ladder.Figures;
import putback.app.text.Page.Ink;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.plan.ToolUse;
import putback.plan.tools.AidNeed;
import putback.plan.tools.Aids;
import putback.plan.tools.TorqueNeed;
import putback.plan.tools.Tray;
import putback.plan.tools.TrayAid;
import putback.plan.tools.WrenchUse;

/** Below the ladder: what to have ready, how long it takes, what else to think of. */
final class PlanFoot {
    private static final int WIDEST_TOOL = 24;

    private final Plan plan;
    private final @Nullable Tray tray;
    private final Page page;

    PlanFoot(Plan plan, @Nullable Tray tray, Page page) {
        this.plan = plan;
        this.tray = tray;
        this.page = page;
    }

    void write() {
        tools();
        wrenches();
        aids();
        parts();
        minutes();
        sentences("ADVICE", plan.advice());
        sentences("WARNINGS", plan.warnings());
        page.gap()
                .words(
                        Ink.FAINT,
                        "The car maker's data and procedure, local codes and licensed practice rule over all of this.");
    }

    private void tools() {
        if (plan.tools().isEmpty()) {
            return;
        }
        page.gap().heading("TOOLS", "");
        int widest = 0;
        for (ToolUse tool : plan.tools()) {
            widest = Math.max(widest, Letters.width(tool.tool()));
        }
        widest = Math.min(widest, WIDEST_TOOL);
        int at = 0;
        for (ToolUse tool : plan.tools()) {
            int room = widest - Letters.width(tool.tool());
            if (room < 0) {
                page.words(Ink.PLAIN, "  ", tool.tool());
            }
            String lead = room < 0 ? " ".repeat(widest) : tool.tool() + " ".repeat(room);
            page.words(Ink.PLAIN, "  " + lead + "  ", steps(tool.steps()) + have(at));
            at++;
        }
    }

    private String have(int tool) {
        return tray == null ? "" : TrayText.have(tray.tools().get(tool).have());
    }

    private void wrenches() {
        if (tray == null || tray.wrenches().isEmpty()) {
            return;
        }
        page.gap().heading("TORQUE WRENCHES", "");
        for (WrenchUse use : tray.wrenchUses()) {
            String due = use.due().isEmpty() ? "" : "; DUE for calibration: " + String.join("; ", use.due());
            page.words(Ink.PLAIN, "  ", use.text() + ", " + steps(use.steps()) + due);
        }
        if (!tray.untorqued().isEmpty()) {
            page.words(Ink.PLAIN, "  ", "none that serves: " + steps(tray.untorqued()));
        }
    }

    /** Where no toolbox is known: what it takes besides sockets and spanners, without a word about who has it. */
    private void needed() {
        TorqueNeed torque = TorqueNeed.of(plan.steps());
        List<AidNeed> aids = Aids.of(plan.steps());
        if (torque == null && aids.isEmpty()) {
            return;
        }
        page.gap().heading("AIDS", "");
        if (torque != null) {
            String range = torque.least().newtonMetres() == torque.most().newtonMetres()
                    ? torque.least().text()
                    : torque.least().text() + " to " + torque.most().text();
            page.words(Ink.PLAIN, "  ", "torque wrench, for " + range + ", " + steps(torque.steps()));
            if (!torque.angled().isEmpty()) {
                page.words(Ink.PLAIN, "  ", "angle gauge, " + steps(torque.angled()));
            }
        }
        for (AidNeed aid : aids) {
            page.words(Ink.PLAIN, "  ", aid.name() + count(aid.atOnce()) + ", put on in " + steps(aid.steps()));
        }
    }

    private static String count(int atOnce) {
        return atOnce > 1 ? ", " + atOnce + " at once" : "";
    }

    private void aids() {
        if (tray == null) {
            needed();
            return;
        }
        if (tray.aids().isEmpty()) {
            return;
        }
        page.gap().heading("AIDS", "");
        for (TrayAid aid : tray.aids()) {
            page.words(
                    Ink.PLAIN,
                    "  ",
                    aid.name() + count(aid.atOnce()) + ", put on in " + steps(aid.steps()) + TrayText.have(aid.have()));
        }
    }

    private static String steps(List<Integer> numbers) {
        StringBuilder steps = new StringBuilder(numbers.size() == 1 ? "step " : "steps ");
        String comma = "";
        for (int step : numbers) {
            steps.append(comma).append(step);
            comma = ", ";
        }
        return steps.toString();
    }

    private void parts() {
        if (plan.parts().isEmpty()) {
            return;
        }
        page.gap().heading("PARTS", plan.parts().get(0).price() == null ? "" : "price");
        BigDecimal sum = BigDecimal.ZERO;
        int priced = 0;
        for (PartNeed need : plan.parts()) {
            BigDecimal price = need.price();
            String reason = need.reason().equals("renew") ? "" : " (" + need.reason() + ")";
            String figure = price == null ? "" : price.toPlainString();
            page.row("  ", "  ", need.count() + " x ", Ink.PLAIN, need.name() + reason, figure);
            if (price != null) {
                sum = sum.add(price);
                priced++;
            }
        }
        if (priced > 1) {
            String rest = priced == plan.parts().size() ? "" : " of what has a price";
            page.row("  ", "  ", "    ", Ink.PLAIN, "Sum" + rest, sum.toPlainString());
        }
    }

    private void minutes() {
        page.gap().heading("MINUTES", "min");
        page.row(
                "  ",
                "  ",
                "",
                Ink.PLAIN,
                "Work",
                Figures.minutes(plan.selection().work()));
        page.row("  ", "  ", "", Ink.PLAIN, "Set-up", Figures.minutes(plan.setup()));
        page.row("  ", "  ", "", Ink.PLAIN, "Total", Figures.minutes(plan.total()));
        String objective = Figures.minutes(plan.objective());
        page.words(
                Ink.PLAIN,
                "  ",
                plan.proof().proven()
                        ? "Work both ways and set-up on the way apart: " + objective
                                + " min, the least there is, proven."
                        : "Work both ways and set-up on the way apart: " + objective
                                + " min, the best found; it cannot be less than "
                                + Figures.minutes(plan.proof().bound()) + " min.");
    }

    private void sentences(String heading, List<String> sentences) {
        if (sentences.isEmpty()) {
            return;
        }
        page.gap().heading(heading, "");
        for (String sentence : sentences) {
            page.words(Ink.PLAIN, "  - ", sentence);
        }
    }
}
