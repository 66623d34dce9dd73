package putback.app.web.planning;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.asking.PriceQuestion;
import putback.app.ladder.Figures;
import putback.app.text.EvidenceWords;
import putback.app.text.JamWords;
import putback.app.text.Odds;
import putback.app.text.SoakWords;
import putback.app.text.TermsWords;
import putback.app.tools.TimeCurve;
import putback.labour.alongside.Neighbour;
import putback.labour.price.Estimate;
import putback.labour.price.Figure;
import putback.labour.price.Line;
import putback.labour.price.Money;
import putback.labour.price.Risk;
import putback.labour.price.Spare;
import putback.labour.seized.RustGrade;
import putback.labour.seized.RustGrades;
import putback.labour.time.DrawnTimes;
import putback.plan.Bond;
import putback.plan.Plan;
import putback.plan.selection.Target;
import putback.quantity.Minutes;
import putback.sheet.Joint;

/**
 * The figures of a price, in words.
 *
 * @param wide curve of the time for a screen, SVG
 * @param narrow the same for a telephone
 * @param jams how many jobs end at a fixing that nothing moves; empty where none can
 * @param jamsCounted what the figures make of those
 * @param figures the three figures, each with its minutes and total
 * @param lines of the estimate
 * @param ceiling how likely the total passes it; empty without one
 * @param renewed what is renewed now, ticked
 * @param neighbours what is worth renewing as well, to be ticked
 * @param others what could be renewed as well, and saves little
 * @param later whether the neighbours are still to come
 * @param terms what was used, exactly
 * @param standing how long the car stands with several hands; empty for one pair
 * @param grades the fixings that are opened and may be seized, each with its own grade
 * @param gradesOwn whether one of them has a grade of its own
 * @param own figures in which the garage's own cases count; empty where everything is an assumption
 * @param soak what penetrant the night before saves; empty for nothing
 */
public record PriceFigures(
        String wide,
        String narrow,
        String jams,
        String jamsCounted,
        String terms,
        List<Row> figures,
        String standing,
        List<Grade> grades,
        boolean gradesOwn,
        List<Row> lines,
        String total,
        String ceiling,
        List<Row> risk,
        List<EvidenceWords> own,
        String soak,
        List<Row> shelf,
        List<Choice> renewed,
        List<Choice> neighbours,
        List<Choice> others,
        boolean later,
        List<String> usual,
        List<String> notes) {
    private static final int MOST_RISKS = 6;
    private static final int MOST_NEIGHBOURS = 200;
    private static final Minutes WORTH_SAVING = Minutes.of("15");

    /** Words with up to two figures. */
    public record Row(String words, String first, String second) {}

    /**
     * A fixing with its grade of rust.
     *
     * @param own null where it is as rusty as the rest
     */
    public record Grade(String id, String name, @Nullable Integer own) {
        /** Whether a grade is chosen; below 0 for as the rest. */
        public boolean is(int grade) {
            return own == null ? grade < 0 : own == grade;
        }
    }

    /** Something to tick. */
    public record Choice(String id, String name, String bond, String now, String alone, String saved, String price) {}

    static PriceFigures of(
            Plan plan,
            Estimate estimate,
            PriceQuestion asked,
            @Nullable DrawnTimes standing,
            List<Neighbour> neighbours,
            boolean later) {
        BigDecimal ceiling = asked.terms().ceiling();
        Long within = estimate.minutesToCeiling();
        Double room = ceiling == null || within == null ? null : Double.valueOf(within);
        boolean early = estimate.stopAndCall().byCeiling();
        boolean jams = estimate.chanceBeatsAll() > 0;
        return new PriceFigures(
                TimeCurve.draw(estimate.time(), room, early, jams, 680),
                TimeCurve.draw(estimate.time(), room, early, jams, 350),
                JamWords.headline(estimate),
                JamWords.counted(estimate),
                TermsWords.of(asked),
                List.of(
                        figure("Likely, as often less as more", estimate.likely()),
                        figure(JamWords.fourInFive(estimate), estimate.fourInFive()),
                        figure(
                                early ? "Stop and call before, for the ceiling" : "Stop and call before",
                                estimate.stopAndCall().figure())),
                standing(standing),
                grades(plan, asked.rust()),
                !asked.rust().closer().isEmpty(),
                lines(estimate),
                estimate.invoice().total().toPlainString(),
                ceiling(estimate, ceiling),
                risk(plan, estimate),
                EvidenceWords.of(estimate),
                soak(plan, estimate),
                shelf(estimate),
                renewed(plan),
                choices(neighbours, true),
                choices(neighbours, false),
                later,
                plan.advice(),
                notes(estimate));
    }

    private static List<String> notes(Estimate estimate) {
        List<String> notes = new ArrayList<>();
        if (estimate.expectedDamage() > 0) {
            BigDecimal damage = BigDecimal.valueOf(estimate.expectedDamage()).setScale(2, RoundingMode.HALF_UP);
            notes.add("Fasteners that break or are cut cost " + damage.toPlainString()
                    + " on average, which is in no line.");
        }
        notes.addAll(estimate.notes());
        return notes;
    }

    private static Row figure(String words, Figure figure) {
        return new Row(words, figure.minutes() + " min", figure.total().toPlainString());
    }

    private static List<Row> lines(Estimate estimate) {
        List<Row> rows = new ArrayList<>();
        for (Line line : estimate.invoice().lines()) {
            String quantity = line.quantity().stripTrailingZeros().toPlainString();
            String unit = line.unit().equals("each") ? "" : " " + line.unit();
            rows.add(new Row(line.text(), quantity + unit, line.amount().toPlainString()));
        }
        return rows;
    }

    private static String ceiling(Estimate estimate, @Nullable BigDecimal ceiling) {
        Double over = estimate.chanceOverCeiling();
        Long within = estimate.minutesToCeiling();
        if (ceiling == null || over == null || within == null) {
            return "";
        }
        String agreed = Money.rounded(ceiling).toPlainString();
        return within < 0
                ? "The parts alone are above the ceiling of " + agreed + "."
                : "Above the ceiling of " + agreed + ": " + Odds.said(over) + ". It is reached after " + within
                        + " min of work.";
    }

    private static List<Row> risk(Plan plan, Estimate estimate) {
        Map<String, String> names = names(plan);
        List<Row> rows = new ArrayList<>();
        for (Risk risk : estimate.riskLines(MOST_RISKS)) {
            String name = risk.id().isEmpty()
                    ? "The whole car: what all its times have in common"
                    : names.getOrDefault(risk.id(), risk.id());
            rows.add(new Row(name, risk.percent() + " %", ""));
        }
        return rows;
    }

    private static String standing(@Nullable DrawnTimes standing) {
        return standing == null
                ? ""
                : "With several hands the car stands " + Math.round(standing.quantile(0.5)) + " min likely, "
                        + Math.round(standing.quantile(0.8)) + " min in 4 jobs of 5, and 1 in 20 takes longer than "
                        + Math.round(standing.quantile(0.95)) + " min; the work to be paid is as above.";
    }

    private static List<Grade> grades(Plan plan, RustGrades rust) {
        List<Grade> grades = new ArrayList<>();
        for (int open : plan.selection().open()) {
            Joint joint = plan.assembly().joints().get(open);
            if (RustGrade.canSeize(joint)) {
                RustGrade own = rust.closer().get(joint.id());
                grades.add(new Grade(joint.id(), joint.name(), own == null ? null : own.number()));
            }
        }
        return grades;
    }

    private static Map<String, String> names(Plan plan) {
        Map<String, String> names = new HashMap<>();
        for (Joint joint : plan.assembly().joints()) {
            names.put(joint.id(), joint.name());
        }
        return names;
    }

    private static String soak(Plan plan, Estimate estimate) {
        if (estimate.soak().joints().isEmpty()) {
            return "";
        }
        Map<String, String> names = names(plan);
        List<String> joints = new ArrayList<>();
        for (String joint : estimate.soak().joints()) {
            joints.add(names.getOrDefault(joint, joint));
        }
        BigDecimal saves = BigDecimal.valueOf(estimate.soak().savesMinutes()).setScale(1, RoundingMode.HALF_UP);
        return String.join("; ", joints) + ". Saves " + saves.toPlainString()
                + " min on average (assumed: a night doubles the penetrant's tries). "
                + SoakWords.CAUTION;
    }

    private static List<Row> shelf(Estimate estimate) {
        List<Row> rows = new ArrayList<>();
        for (Spare spare : estimate.shelf()) {
            rows.add(new Row(
                    spare.count() + " x fastener of " + spare.name(),
                    Odds.said(spare.chance()),
                    spare.price().toPlainString()));
        }
        return rows;
    }

    private static List<Choice> renewed(Plan plan) {
        List<Choice> choices = new ArrayList<>();
        for (Target target : plan.wanted().targets()) {
            choices.add(new Choice(target.id(), target.name(), "", "", "", "", ""));
        }
        return choices;
    }

    private static List<Choice> choices(List<Neighbour> neighbours, boolean worth) {
        List<Choice> choices = new ArrayList<>();
        if (worth) {
            neighbours.stream().filter(one -> one.bond() != null).forEach(one -> choices.add(choice(one)));
        }
        for (Neighbour one : neighbours) {
            if (one.bond() == null && isWorthIt(one) == worth && choices.size() < MOST_NEIGHBOURS) {
                choices.add(choice(one));
            }
        }
        return choices;
    }

    /** Now it takes a third or less of what it takes alone, and a quarter of an hour is saved: our choice, no source. */
    private static boolean isWorthIt(Neighbour one) {
        return one.saved().compareTo(one.extra().plus(one.extra())) >= 0
                && one.saved().compareTo(WORTH_SAVING) >= 0;
    }

    private static Choice choice(Neighbour one) {
        BigDecimal price = one.priceNow();
        Bond bond = one.bond();
        return new Choice(
                one.target().id(),
                one.target().name(),
                bond == null ? "" : bond.said(),
                (one.proven() ? "" : "~") + Figures.minutes(one.extra()),
                Figures.minutes(one.alone()),
                Figures.minutes(one.saved()),
                price == null ? "not known" : price.toPlainString() + (one.soldAsAxleSet() ? ", both sides" : ""));
    }
}
