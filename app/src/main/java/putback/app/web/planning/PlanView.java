package putback.app.web.planning;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.ladder.Figures;
import putback.app.ladder.LadderSize;
import putback.app.ladder.LadderSvg;
import putback.app.text.Headline;
import putback.app.web.frame.Question;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.plan.steps.Phase;
import putback.plan.tools.Tray;

/**
 * A plan as the page shows it.
 *
 * @param proof whether anything cheaper exists, in words
 * @param sum of the prices; null when fewer than two are known
 * @param sumNote what the sum leaves out; may be empty
 */
public record PlanView(
        Question question,
        String title,
        String renewed,
        String work,
        String setup,
        String total,
        String proof,
        String wide,
        String narrow,
        List<StepView> apart,
        List<StepView> together,
        TrayView tray,
        List<PartNeed> parts,
        @Nullable String sum,
        String sumNote,
        List<String> advice,
        List<String> warnings) {
    public PlanView {
        apart = List.copyOf(apart);
        together = List.copyOf(together);
        parts = List.copyOf(parts);
        advice = List.copyOf(advice);
        warnings = List.copyOf(warnings);
    }

    /** A plan as its page shows it; the tray is null without a toolbox. */
    public static PlanView of(Question question, Plan plan, @Nullable Tray tray) {
        StepViews steps = new StepViews(plan, tray);
        int priced = 0;
        BigDecimal sum = BigDecimal.ZERO;
        for (PartNeed need : plan.parts()) {
            BigDecimal price = need.price();
            if (price != null) {
                sum = sum.add(price);
                priced++;
            }
        }
        return new PlanView(
                question,
                plan.assembly().sheet().title(),
                Headline.renewed(plan),
                Figures.minutes(plan.selection().work()),
                Figures.minutes(plan.setup()),
                Figures.minutes(plan.total()),
                proof(plan),
                LadderSvg.draw(plan, LadderSize.WIDE),
                LadderSvg.draw(plan, LadderSize.NARROW),
                steps.of(Phase.APART),
                steps.of(Phase.TOGETHER),
                TrayView.of(plan, tray),
                plan.parts(),
                priced > 1 ? sum.toPlainString() : null,
                priced == plan.parts().size() ? "" : " of what has a price",
                plan.advice(),
                plan.warnings());
    }

    private static String proof(Plan plan) {
        String objective = Figures.minutes(plan.objective());
        return plan.proof().proven()
                ? "Work both ways and set-up on the way apart: " + objective + " min. No cheaper way exists: proven."
                : "Work both ways and set-up on the way apart: " + objective
                        + " min, the best found. No way can be cheaper than "
                        + Figures.minutes(plan.proof().bound()) + " min.";
    }

    /** What is read out when the plan has changed. */
    public String said() {
        return renewed + ": " + total + " minutes, " + (apart.size() + together.size()) + " steps; the plan is below.";
    }

    /** Why a part is on the list; empty where it is what was asked for. */
    public static String reason(PartNeed need) {
        return need.reason().equals("renew") ? "" : need.reason();
    }

    /** The price of a part. */
    public static String price(PartNeed need) {
        BigDecimal price = need.price();
        return price == null ? "not known" : price.toPlainString();
    }
}
