package putback.app.text;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.text.Page.Ink;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.plan.tools.Limits;
import putback.plan.tools.Tray;
import putback.sheet.Height;
import putback.tightening.toolbox.Tightened;

/** The ladder as text: each step on a rail, the mark on it showing how the fixing is left. */
public final class PlanText {
    private final Plan plan;
    private final List<Step> steps;
    private final Page page;
    private final int digits;
    private final @Nullable Tray tray;
    private @Nullable Whereabouts here;

    private PlanText(Plan plan, @Nullable Tray tray, Screen screen) {
        this.plan = plan;
        this.tray = tray;
        this.steps = plan.steps();
        this.page = new Page(screen);
        this.digits = 1 + 2 * Integer.toString(steps.size()).length();
    }

    /**
     * The whole plan, from the title to the warnings.
     *
     * @param tray what the toolbox has for it; null where no toolbox is known
     */
    public static String of(Plan plan, @Nullable Tray tray, Screen screen) {
        return new PlanText(plan, tray, screen).write();
    }

    private String write() {
        page.words(Ink.STRONG, plan.assembly().sheet().title());
        page.words(Ink.PLAIN, "Renew: ", Headline.renewed(plan));
        if (tray != null) {
            page.words(Ink.PLAIN, TrayText.summary(tray));
        }
        int renew = firstRenewal();
        int together = firstTogether(renew);
        int after = afterwards(together);
        section("APART", "│", 0, renew);
        section("RENEW", " ", renew, together);
        section("TOGETHER", "│", together, after);
        section("AFTERWARDS", " ", after, steps.size());
        page.gap().words(Ink.FAINT, "○ open  ◌ broken loose  ◐ on its thread  ● closed or tight    min with set-up");
        new PlanFoot(plan, tray, page).write();
        return page.toString();
    }

    private int firstRenewal() {
        int at = 0;
        while (at < steps.size()
                && steps.get(at).phase() == Phase.APART
                && steps.get(at).act() != Act.RENEW) {
            at++;
        }
        return at;
    }

    private int firstTogether(int from) {
        int at = from;
        while (at < steps.size()
                && (steps.get(at).phase() == Phase.APART || steps.get(at).act() == Act.PREPARE)) {
            at++;
        }
        return at;
    }

    /** After the last step that changes anything on the car. */
    private int afterwards(int from) {
        int at = steps.size();
        while (at > from) {
            Act act = steps.get(at - 1).act();
            if (act != Act.SECOND_LOOK && act != Act.FOLLOW_UP && act != Act.CHECK && act != Act.LOOK) {
                break;
            }
            at--;
        }
        return at;
    }

    private void section(String name, String rail, int from, int to) {
        if (from == to) {
            return;
        }
        page.gap().heading(name, from == 0 ? "min" : "");
        int at = from;
        while (at < to) {
            StepLines lines = StepLines.at(steps, at, to);
            if (lines.first().act() == Act.HEIGHT) {
                height(lines);
            } else {
                place(Whereabouts.of(steps, at), rail);
                page.row(
                        "  " + lines.mark(rail), "  " + rail, number(lines), Ink.FAINT, lines.words(), lines.minutes());
            }
            below(lines, rail);
            at += lines.count();
        }
    }

    private void height(StepLines lines) {
        Step step = lines.first();
        page.rule("───" + number(lines), standing(step.height()), lines.minutes());
        page.row("  │", "  │", " ".repeat(digits + 3), Ink.PLAIN, step.text(), "");
    }

    private static String standing(Height height) {
        return switch (height) {
            case RAISED -> "Raised, wheels hanging";
            case RIDE_HEIGHT -> "At ride height";
            case ON_WHEELS, ANY -> "On its wheels";
        };
    }

    /** A small heading where the mechanic goes to another place or another side. */
    private void place(Whereabouts now, String rail) {
        if (now.station() == null || now.equals(here)) {
            return;
        }
        here = now;
        page.row(rail.equals(" ") ? "    " : "  ├─", "  " + rail + " ", " ", Ink.PLAIN, now.text(), "");
    }

    private void below(StepLines lines, String rail) {
        String indent = " ".repeat(digits + 3);
        for (String stage : lines.stages()) {
            page.row("  " + rail, "  " + rail, indent + "- ", Ink.PLAIN, stage, "");
        }
        Limits limits = Limits.of(lines.last());
        if (limits != null) {
            Tightened tightened =
                    tray == null ? null : tray.wrenches().get(lines.last().number());
            for (String line : WrenchText.lines(limits, tightened)) {
                page.row("  " + rail, "  " + rail, indent + "- ", Ink.PLAIN, line, "");
            }
        }
        for (String caution : lines.cautions()) {
            page.row("  " + rail, "  " + rail, indent + "! ", Ink.OCHRE, caution, "");
        }
    }

    private String number(StepLines lines) {
        String number = lines.number();
        return " " + " ".repeat(Math.max(0, digits - number.length())) + number + "  ";
    }
}
