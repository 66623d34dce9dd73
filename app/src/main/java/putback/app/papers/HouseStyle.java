package putback.app.papers;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Pattern;
import putback.quantity.Torque;
import putback.tightening.ReadingWindow;

/**
 * How a garage writes figures on its papers. Nothing here is taken from the machine that prints.
 *
 * @param decimalComma whether 1.5 is written 1,5
 * @param poundFeetFirst whether a torque has lbf·ft before N·m
 * @param miles whether a distance driven is in mi, not km
 * @param currency sign or letters such as {@code €} or {@code EUR}; empty where nobody has said
 * @param currencyBefore whether it stands before the amount
 */
public record HouseStyle(
        PaperSize paper,
        boolean decimalComma,
        DateOrder dates,
        boolean poundFeetFirst,
        boolean miles,
        String currency,
        boolean currencyBefore) {
    /** What is used where a garage has said nothing: no currency, dates that cannot be misread. */
    public static final HouseStyle PLAIN =
            new HouseStyle(PaperSize.A4, false, DateOrder.YEAR_MONTH_DAY, false, false, "", false);

    private static final double KM_PER_MILE = 1.609344;
    private static final Pattern WITH_UNIT =
            Pattern.compile("(?<![\\d.x])(\\d+)\\.(\\d+)(?= (?:to \\d|N·m|lbf|mm|min|in\\b|kg|km|mi\\b|bar|deg|%))");

    /** The same with amounts in another currency. */
    public HouseStyle inCurrency(String other) {
        return new HouseStyle(paper, decimalComma, dates, poundFeetFirst, miles, other, currencyBefore);
    }

    /** The same on other paper. */
    public HouseStyle on(PaperSize size) {
        return new HouseStyle(size, decimalComma, dates, poundFeetFirst, miles, currency, currencyBefore);
    }

    /** A number as it is, with the garage's decimal mark. */
    public String number(BigDecimal number) {
        return marked(number.toPlainString());
    }

    /** An amount of money with its currency: {@code 92.00}, {@code €92.00}, {@code 92,00 €}. */
    public String money(BigDecimal amount) {
        String figure = number(amount);
        if (currency.isEmpty()) {
            return figure;
        }
        if (!currencyBefore) {
            return figure + "\u00a0" + currency;
        }
        String gap = currency.length() > 1 ? "\u00a0" : "";
        return figure.startsWith("-") ? "-" + currency + gap + figure.substring(1) : currency + gap + figure;
    }

    /** {@code 2026-11-02}, {@code 02.11.2026} with a decimal comma, {@code 02/11/2026} with a point. */
    public String date(LocalDate date) {
        String year = String.format(Locale.ROOT, "%04d", date.getYear());
        String month = String.format(Locale.ROOT, "%02d", date.getMonthValue());
        String day = String.format(Locale.ROOT, "%02d", date.getDayOfMonth());
        String mark = decimalComma ? "." : "/";
        return switch (dates) {
            case YEAR_MONTH_DAY -> year + "-" + month + "-" + day;
            case DAY_MONTH_YEAR -> day + mark + month + mark + year;
            case MONTH_DAY_YEAR -> month + mark + day + mark + year;
        };
    }

    /** Both units, the garage's own first: {@code 98 N·m (72 lbf·ft)}. */
    public String torque(Torque torque) {
        return marked(poundFeetFirst ? torque.textPoundFeetFirst() : torque.text());
    }

    /** What a reading may be, in both units, the garage's own first, limits rounded inward. */
    public String window(ReadingWindow window) {
        String both = window.text();
        int from = both.indexOf(" (");
        String swapped = both.substring(from + 2, both.length() - 1) + " (" + both.substring(0, from) + ")";
        return marked(poundFeetFirst ? swapped : both);
    }

    /** The unit in which a reading is written down. */
    public String torqueUnit() {
        return poundFeetFirst ? "lbf·ft" : "N·m";
    }

    /** A distance driven, rounded to whole tens where it is turned into miles: {@code 100 km}, {@code 60 mi}. */
    public String about(int kilometres) {
        return miles ? Math.round(kilometres / KM_PER_MILE / 10) * 10 + " mi" : kilometres + " km";
    }

    /** The unit of an odometer. */
    public String distanceUnit() {
        return miles ? "mi" : "km";
    }

    /** A sentence whose figures with a unit get the garage's decimal mark; M12x1.25 and 10.9 stay. */
    public String words(String sentence) {
        return decimalComma ? WITH_UNIT.matcher(sentence).replaceAll("$1,$2") : sentence;
    }

    private String marked(String figure) {
        return decimalComma ? figure.replace('.', ',') : figure;
    }
}
