package putback.app.asking;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrade;
import putback.quantity.PlainNumber;

/** On what terms a job is priced, as a person types it on a page. */
public final class TermsQuestion {
    /** An hour's work where nobody says what it costs. */
    public static final BigDecimal USUAL_RATE = new BigDecimal("60.00");

    private static final BigDecimal MOST = new BigDecimal("10000000");

    private TermsQuestion() {}

    /** Reads the terms, or says what is wrong with the first value that cannot be. */
    public static Terms read(Given given) throws Unclear {
        BigDecimal rate = number(given, "rate");
        Terms terms = new Terms(
                rate == null ? USUAL_RATE : rate,
                or(number(given, "tax")),
                false,
                or(number(given, "markup")),
                or(number(given, "sundries")),
                BigDecimal.ZERO,
                number(given, "ceiling"));
        return Given.answer(terms.checked());
    }

    /** The grade of rust; clean where nobody says. */
    public static RustGrade rust(Given given) throws Unclear {
        BigDecimal grade = number(given, "rust");
        if (grade == null) {
            return RustGrade.CLEAN;
        }
        if (grade.stripTrailingZeros().scale() > 0) {
            throw given.unclear("rust", grade.toPlainString() + " is not a grade; it is 0 to 4");
        }
        return Given.answer(RustGrade.of(grade.min(BigDecimal.TEN).intValue()));
    }

    private static BigDecimal or(@Nullable BigDecimal given) {
        return given == null ? BigDecimal.ZERO : given;
    }

    private static @Nullable BigDecimal number(Given given, String name) throws Unclear {
        BigDecimal number = given.read(name, PlainNumber::parse);
        if (number != null && (number.signum() < 0 || number.compareTo(MOST) > 0)) {
            throw given.unclear(name, number.toPlainString() + " is not possible; it is 0 or more");
        }
        return number;
    }
}
