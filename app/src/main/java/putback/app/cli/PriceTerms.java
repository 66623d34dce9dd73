package putback.app.cli;

import java.math.BigDecimal;
import java.util.List;
import putback.labour.price.Terms;

/** The options that say on what terms a garage works. */
final class PriceTerms {
    /** What an hour costs where nobody says; the text says so. */
    static final BigDecimal USUAL_RATE = new BigDecimal("60.00");

    static final String RATE = "--rate";
    private static final String TAX = "--tax";
    private static final String TAX_ON = "--tax-on";
    private static final String MARKUP = "--markup";
    private static final String SUNDRIES = "--sundries";
    private static final String SUBCONTRACTED = "--subcontracted";
    private static final String CEILING = "--ceiling";
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal MOST_MARKUP = BigDecimal.valueOf(1000);

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
        String taxOn = arguments.value(TAX_ON).orElse("sum");
        if (!taxOn.equals("sum") && !taxOn.equals("line")) {
            throw Renewing.fault(PriceCommand.NAME, TAX_ON + " is sum or line, not \"" + taxOn + "\"");
        }
        BigDecimal rate = Numbers.money(PriceCommand.NAME, arguments, RATE, new BigDecimal("0.01"));
        return new Terms(
                rate == null ? USUAL_RATE : rate,
                percent(arguments, TAX, HUNDRED),
                taxOn.equals("line"),
                percent(arguments, MARKUP, MOST_MARKUP),
                money(arguments, SUNDRIES),
                money(arguments, SUBCONTRACTED),
                Numbers.money(PriceCommand.NAME, arguments, CEILING, BigDecimal.ZERO));
    }

    private static BigDecimal percent(Arguments arguments, String name, BigDecimal most) throws UsageFault {
        BigDecimal given =
                Numbers.between(PriceCommand.NAME, arguments, name, BigDecimal.ZERO, most, "a number of percent");
        return given == null ? BigDecimal.ZERO : given;
    }

    private static BigDecimal money(Arguments arguments, String name) throws UsageFault {
        BigDecimal given = Numbers.money(PriceCommand.NAME, arguments, name, BigDecimal.ZERO);
        return given == null ? BigDecimal.ZERO : given;
    }
}
