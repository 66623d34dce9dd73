package putback.app.asking;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrades;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.quantity.Shown;
import putback.sheet.Assembly;

/** On what terms a job is priced, as a person types it in the terminal or on a page. */
public final class TermsQuestion {
    /** An hour's work where nobody says what it costs. */
    public static final BigDecimal USUAL_RATE = new BigDecimal("60.00");

    private static final BigDecimal LEAST_RATE = new BigDecimal("0.01");
    private static final BigDecimal MOST_MONEY = BigDecimal.valueOf(1_000_000);
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal MOST_MARKUP = BigDecimal.valueOf(1000);
    private static final int HUNDREDTHS = 2;
    private static final int FINEST_PERCENT = 6;
    private static final BigDecimal MOST_HANDS = BigDecimal.valueOf(9);

    private TermsQuestion() {}

    /** Reads the terms, or says what is wrong with the first value that cannot be. */
    public static Terms read(Given given) throws Unclear {
        BigDecimal rate = money(given, "rate", LEAST_RATE);
        Terms terms = new Terms(
                rate == null ? USUAL_RATE : rate,
                or(percent(given, "tax", HUNDRED)),
                isTaxEachLine(given),
                or(percent(given, "markup", MOST_MARKUP)),
                or(money(given, "sundries", BigDecimal.ZERO)),
                or(money(given, "subcontracted", BigDecimal.ZERO)),
                money(given, "ceiling", BigDecimal.ZERO));
        return Given.answer(terms.checked());
    }

    /** How many people work on it; one where nobody says. */
    public static int hands(Given given) throws Unclear {
        String what = "a whole number of people";
        BigDecimal hands = within(given, "hands", BigDecimal.ONE, MOST_HANDS, 0, what);
        return hands == null ? 1 : hands.intValue();
    }

    /**
     * How rusty it is; clean where nobody says.
     *
     * @param typed one or more grades each, with commas between
     */
    public static RustGrades rust(Given given, Assembly assembly, List<String> typed) throws Unclear {
        List<String> words = new ArrayList<>();
        for (String one : typed) {
            for (String word : one.split(",", -1)) {
                words.add(word.strip());
            }
        }
        Parsed<RustGrades> grades = RustGrades.read(assembly, words);
        if (grades instanceof Parsed.Value<RustGrades> read) {
            return read.value();
        }
        throw given.unclear("rust", grades.refusal());
    }

    private static boolean isTaxEachLine(Given given) throws Unclear {
        String on = given.values().apply("tax-on");
        if (on != null && !on.equals("sum") && !on.equals("line")) {
            throw new Unclear("tax-on", given.shown("tax-on") + " is sum or line, not \"" + Shown.text(on) + "\"");
        }
        return "line".equals(on);
    }

    private static BigDecimal or(@Nullable BigDecimal given) {
        return given == null ? BigDecimal.ZERO : given;
    }

    private static @Nullable BigDecimal money(Given given, String name, BigDecimal least) throws Unclear {
        return within(given, name, least, MOST_MONEY, HUNDREDTHS, "an amount of money such as 60.00");
    }

    private static @Nullable BigDecimal percent(Given given, String name, BigDecimal most) throws Unclear {
        return within(given, name, BigDecimal.ZERO, most, FINEST_PERCENT, "a number of percent");
    }

    private static @Nullable BigDecimal within(
            Given given, String name, BigDecimal least, BigDecimal most, int places, String what) throws Unclear {
        String text = given.values().apply(name);
        if (text == null) {
            return null;
        }
        Parsed<BigDecimal> parsed = PlainNumber.parse(text);
        String wrong = parsed.refusal();
        if (parsed instanceof Parsed.Value<BigDecimal> number) {
            BigDecimal value = number.value();
            boolean isFine = value.stripTrailingZeros().scale() > places;
            if (!isFine && value.compareTo(least) >= 0 && value.compareTo(most) <= 0) {
                return value;
            }
            wrong = "not \"" + Shown.text(text) + "\""
                    + (isFine ? places == 0 ? "" : ", which has more than " + places + " decimals" : "");
        }
        throw new Unclear(
                name,
                given.shown(name) + " is " + what + ", " + least.toPlainString() + " to " + most.toPlainString() + "; "
                        + wrong);
    }
}
