package putback.app.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import putback.labour.seized.Attempt;
import putback.labour.seized.LeftOut;
import putback.labour.seized.Row;
import putback.labour.seized.Try;

/** What to try on a fastener that will not move, for a person with dirty hands. */
public final class RowText {
    private static final int WIDTH = 78;
    private static final int COLUMN = 24;
    private static final MathContext SHORT = new MathContext(3, RoundingMode.HALF_UP);
    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private RowText() {}

    /** Numbered, at most 78 columns wide. */
    public static String of(Row row, BigDecimal rate) {
        StringBuilder text = new StringBuilder();
        text.append("It will not move. Try in this order; an hour counts ")
                .append(money(rate))
                .append(".\n\n");
        int number = 0;
        for (Try one : row.tries()) {
            number++;
            attempt(text, number, one, row.isCertain());
        }
        if (number > 0) {
            text.append('\n');
            wrapped(text, "", average(row));
        }
        for (String caution : RowCautions.of(row)) {
            text.append('\n');
            wrapped(text, "", caution);
        }
        section(text, "Not here:", row.leftOut(), true);
        section(text, "Not worth a try:", row.leftOut(), false);
        text.append('\n');
        end(text, row);
        return text.toString();
    }

    private static void attempt(StringBuilder text, int number, Try one, boolean certain) {
        Attempt attempt = one.attempt();
        String name = number + ". " + attempt.id();
        text.append(name)
                .append(name.length() < COLUMN ? " ".repeat(COLUMN - name.length()) : "\n" + " ".repeat(COLUMN));
        text.append(minutes(attempt.minutes().decimal())).append(", ");
        boolean sure = attempt.chance().compareTo(BigDecimal.ONE) == 0;
        text.append(sure ? "sure to work" : "works " + inHundred(attempt.chance()));
        text.append("; by then ").append(minutes(one.elapsed().decimal())).append('\n');
        if (attempt.breakChance().signum() > 0) {
            detail(text, "may do damage, " + inHundred(attempt.breakChance()) + ", for " + money(attempt.breakPrice()));
        }
        if (attempt.scraps().signum() > 0) {
            detail(text, "scraps something for " + money(attempt.scraps()));
        }
        if (!certain) {
            detail(text, "pays while giving up costs more than " + money(one.worth()));
        }
    }

    private static void detail(StringBuilder text, String said) {
        text.append("   ").append(said).append('\n');
    }

    private static void section(StringBuilder text, String title, List<LeftOut> leftOut, boolean banned) {
        boolean first = true;
        for (LeftOut one : leftOut) {
            if (one.banned() == banned) {
                text.append(first ? "\n" + title + "\n" : "");
                first = false;
                reasons(text, one);
            }
        }
    }

    private static void reasons(StringBuilder text, LeftOut one) {
        List<String> reasons = one.reasons();
        wrapped(text, "- ", one.attempt().id() + ": " + reasons.get(0));
        for (String reason : reasons.subList(1, reasons.size())) {
            wrapped(text, "  ", reason);
        }
    }

    private static void end(StringBuilder text, Row row) {
        for (String sentence : ending(row)) {
            wrapped(text, "", sentence);
        }
    }

    /** When to stop, and what is left to decide. */
    static List<String> ending(Row row) {
        List<String> ending = new ArrayList<>();
        if (row.tries().size() > 2) {
            ending.add("After two without movement, or ten minutes, stop: take a picture, decide what is kept and what"
                    + " is scrap, tell the desk (common practice).");
        }
        ending.add(
                row.tries().isEmpty()
                        ? "Left to decide: nothing here may be tried. Stop and ask."
                        : row.isCertain()
                                ? "The last one is sure to work."
                                : "Left to decide: " + inHundred(row.leftChance())
                                        + " that none of these works. Then stop and ask what giving up costs: a new"
                                        + " piece, its price and a fresh approval.");
        return ending;
    }

    /** What all of it takes; empty where nothing may be tried. */
    static String average(Row row) {
        return row.tries().isEmpty()
                ? ""
                : "On average " + minutes(row.expectedMinutes()) + " and " + money(row.expectedCost())
                        + " in all. Nine times in ten it takes no more than "
                        + minutes(row.p90Minutes().decimal()) + ".";
    }

    static String money(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    static String minutes(BigDecimal minutes) {
        return plain(minutes.setScale(1, RoundingMode.HALF_UP)) + " min";
    }

    static String inHundred(BigDecimal chance) {
        if (chance.signum() > 0 && chance.compareTo(HUNDREDTH) < 0) {
            BigDecimal one =
                    BigDecimal.ONE.divide(chance, MathContext.DECIMAL64).round(SHORT);
            return "1 in " + one.setScale(0, RoundingMode.HALF_UP).toPlainString();
        }
        return plain(chance.multiply(HUNDRED).round(SHORT)) + " in 100";
    }

    private static String plain(BigDecimal value) {
        BigDecimal shown = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return shown.toPlainString();
    }

    static void wrapped(StringBuilder text, String mark, String said) {
        text.append(mark);
        int column = mark.length();
        boolean first = true;
        for (String word : said.split(" ", -1)) {
            if (!first && column + 1 + word.length() > WIDTH) {
                text.append('\n').append(" ".repeat(mark.length()));
                column = mark.length();
                first = true;
            }
            text.append(first ? "" : " ").append(word);
            column += word.length() + (first ? 0 : 1);
            first = false;
        }
        text.append('\n');
    }
}
