package putback.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.ladder.Figures;
import putback.app.text.Page.Ink;
import putback.labour.alongside.LifeLeft;
import putback.labour.alongside.Neighbour;
import putback.plan.Plan;
import putback.sheet.Life;

/** What could be renewed as well, for the talk before the job. */
public final class AlongsideText {
    private static final int FIGURE = 8;
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private final Page page;
    private final @Nullable LifeLeft left;
    private final @Nullable BigDecimal rate;

    private AlongsideText(Page page, @Nullable LifeLeft left, @Nullable BigDecimal rate) {
        this.page = page;
        this.left = left;
        this.rate = rate;
    }

    /**
     * @param left how far the car has come; null when that is not said
     * @param rate an hour's work; null when it is not said
     */
    public static String of(
            Plan plan, List<Neighbour> neighbours, @Nullable LifeLeft left, @Nullable BigDecimal rate, Screen screen) {
        AlongsideText text = new AlongsideText(new Page(screen), left, rate);
        text.write(plan, neighbours);
        return text.page.toString();
    }

    private void write(Plan plan, List<Neighbour> neighbours) {
        page.words(
                Ink.STRONG,
                "While it is apart for: " + Headline.renewed(plan) + ", " + Figures.minutes(plan.objective()) + " min");
        String columns = row("now", "alone", "saved", "price");
        List<Neighbour> usual =
                neighbours.stream().filter(one -> one.bond() != null).toList();
        List<Neighbour> others =
                neighbours.stream().filter(one -> one.bond() == null).toList();
        if (!plan.advice().isEmpty() || !usual.isEmpty()) {
            page.gap().heading("USUALLY WITH IT", usual.isEmpty() ? "" : columns);
            rows(usual);
            for (String sentence : plan.advice()) {
                page.words(Ink.PLAIN, "  - ", sentence);
            }
        }
        if (others.isEmpty()) {
            page.gap().words(Ink.PLAIN, "Nothing else of this sheet shares work with it.");
        } else {
            page.gap().heading("ALONGSIDE", columns);
            rows(others);
        }
        if (!neighbours.isEmpty()) {
            foot(neighbours);
        }
    }

    private void rows(List<Neighbour> neighbours) {
        for (Neighbour one : neighbours) {
            BigDecimal price = one.priceNow();
            page.row(
                    "  ",
                    "  ",
                    "",
                    Ink.PLAIN,
                    one.target().name() + wear(one),
                    row(
                            (one.proven() ? "" : "~") + Figures.minutes(one.extra()),
                            Figures.minutes(one.alone()),
                            Figures.minutes(one.saved()),
                            price == null ? "-" : price.toPlainString() + (one.soldAsAxleSet() ? "*" : "")));
        }
    }

    private void foot(List<Neighbour> neighbours) {
        page.gap()
                .words(
                        Ink.PLAIN,
                        "Minutes of work and set-up on the way apart: what it adds now, what it takes alone later, and the"
                                + " difference. Each line is by itself: two of them together may add less.");
        if (neighbours.stream().anyMatch(Neighbour::soldAsAxleSet)) {
            page.words(Ink.PLAIN, "* sold as an axle set: the price is for both sides together, and is paid once.");
        }
        lives(neighbours);
        boolean sure = true;
        for (Neighbour one : neighbours) {
            sure &= one.proven();
        }
        if (!sure) {
            page.words(Ink.PLAIN, "~ from the best plans found; they are not proven to be the least.");
        }
    }

    private void lives(List<Neighbour> neighbours) {
        if (left == null) {
            return;
        }
        boolean known = neighbours.stream().anyMatch(one -> one.life() != null);
        page.words(
                Ink.PLAIN,
                known
                        ? "\"fails\": its odds to fail within " + left.horizon().text() + ", having lasted "
                                + left.mileage().text() + "; in brackets the minutes that doing it now then saves on"
                                + " average" + (rate == null ? "." : ", and their price.")
                        : "The mileage changes nothing here: the sheet gives no life of any of these parts.");
    }

    private String wear(Neighbour one) {
        Life life = one.life();
        if (left == null || life == null) {
            return "";
        }
        double chance = left.fails(life);
        BigDecimal saved = BigDecimal.valueOf(chance).multiply(one.saved().decimal());
        String money = rate == null
                ? ""
                : ", "
                        + saved.multiply(rate)
                                .divide(SIXTY, 2, RoundingMode.HALF_UP)
                                .toPlainString();
        return ", fails " + Odds.said(chance) + " ("
                + saved.setScale(1, RoundingMode.HALF_UP).toPlainString() + " min" + money + ")";
    }

    private static String row(String now, String alone, String saved, String price) {
        return column(now) + column(alone) + column(saved) + column(price);
    }

    private static String column(String figure) {
        return " ".repeat(Math.max(1, FIGURE - figure.length())) + figure;
    }
}
