package putback.app.cli;

import java.util.List;
import putback.app.asking.TermsQuestion;
import putback.app.asking.Unclear;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrades;
import putback.sheet.Assembly;

/** The options that say on what terms a garage works. */
final class PriceTerms {
    static final Option RUST = Option.values(
            "--rust", "0..4|NAME=0..4[,...]", "how rusty it is: 3, left=4, left.strut-to-hub=2; 0 if not said");
    static final Option HANDS = Option.value("--hands", "N", "how many people work on it, 1 to 9");

    private static final String RATE = "--rate";
    private static final String TAX = "--tax";
    private static final String TAX_ON = "--tax-on";
    private static final String MARKUP = "--markup";
    private static final String SUNDRIES = "--sundries";
    private static final String SUBCONTRACTED = "--subcontracted";
    private static final String CEILING = "--ceiling";

    static final List<Option> OPTIONS = List.of(
            Option.value(RATE, "60.00", "an hour's work; 60.00 if not said"),
            Option.value(TAX, "20", "in percent; none if not said"),
            Option.value(TAX_ON, "sum|line", "what tax is rounded on; sum if not said"),
            Option.value(MARKUP, "0", "on parts, in percent"),
            Option.value(SUNDRIES, "0.00", "small things, as a line of their own"),
            Option.value(SUBCONTRACTED, "0.00", "work of others, as a line of its own"),
            Option.value(CEILING, "500.00", "how much the customer agreed to, with tax"));

    private PriceTerms() {}

    static Terms of(Arguments arguments) throws UsageFault {
        try {
            return TermsQuestion.read(Typed.in(arguments));
        } catch (Unclear unclear) {
            throw Renewing.fault(PriceCommand.NAME, unclear.said());
        }
    }

    static int hands(Arguments arguments) throws UsageFault {
        try {
            return TermsQuestion.hands(Typed.in(arguments));
        } catch (Unclear unclear) {
            throw Renewing.fault(PriceCommand.NAME, unclear.said());
        }
    }

    /** Once the sheet is there, since fixings are named. */
    static RustGrades rust(Arguments arguments, Assembly assembly) throws UsageFault {
        try {
            return TermsQuestion.rust(Typed.in(arguments), assembly, arguments.values(RUST.name()));
        } catch (Unclear unclear) {
            throw Renewing.fault(PriceCommand.NAME, unclear.said());
        }
    }
}
