package putback.app.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import putback.app.asking.PriceQuestion;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrade;

/** On what terms a price was reckoned, in one sentence and with exactly the figures that were used. */
public final class TermsWords {
    private TermsWords() {}

    public static String of(PriceQuestion asked) {
        Terms terms = asked.terms();
        List<String> words = new ArrayList<>();
        words.add("Rust grade " + asked.rust().usual().number() + (asked.rust().isClean() ? ", nothing seized" : ""));
        List<String> closer = new ArrayList<>();
        for (Map.Entry<String, RustGrade> one : asked.rust().closer().entrySet()) {
            closer.add(one.getKey() + " " + one.getValue().number());
        }
        if (!closer.isEmpty()) {
            words.add("but " + String.join(", ", closer));
        }
        words.add("an hour at " + money(terms.ratePerHour()));
        if (terms.taxPercent().signum() > 0) {
            words.add("tax " + plain(terms.taxPercent()) + " % rounded "
                    + (terms.taxEachLine() ? "line by line" : "once"));
        }
        if (terms.markupPercent().signum() > 0) {
            words.add("markup " + plain(terms.markupPercent()) + " %");
        }
        words.add(asked.hands() == 1 ? "one pair of hands" : asked.hands() + " pairs of hands");
        return String.join("; ", words) + ".";
    }

    private static String money(BigDecimal amount) {
        return amount.setScale(Math.max(2, amount.stripTrailingZeros().scale())).toPlainString();
    }

    private static String plain(BigDecimal amount) {
        BigDecimal plain = amount.stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0).toPlainString() : plain.toPlainString();
    }
}
