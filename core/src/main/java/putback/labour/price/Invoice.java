package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines that add up: their amounts are rounded one by one, and every sum is a sum of rounded amounts.
 *
 * @param lines labour, parts with sundries and subcontracted work, tax
 */
public record Invoice(List<Line> lines) {
    public Invoice {
        lines = List.copyOf(lines);
    }

    /**
     * One line of labour.
     *
     * @param minutes whole ones, 0 or more
     */
    public record Labour(String text, long minutes) {}

    /**
     * Something bought.
     *
     * @param cost of all of them, without markup
     */
    public record Bought(String text, int count, BigDecimal cost) {}

    public static Invoice of(List<Labour> labour, List<Bought> bought, Terms terms) {
        List<Line> lines = new ArrayList<>();
        for (Labour one : labour) {
            BigDecimal amount = Money.ofMinutes(one.minutes(), terms.ratePerHour());
            lines.add(new Line(Line.Kind.LABOUR, one.text(), BigDecimal.valueOf(one.minutes()), "min", amount));
        }
        for (Bought one : bought) {
            BigDecimal amount = Money.rounded(one.cost().add(markup(one.cost(), terms)));
            lines.add(new Line(Line.Kind.PARTS, one.text(), BigDecimal.valueOf(one.count()), "each", amount));
        }
        addOnce(lines, "Sundries", terms.sundries());
        addOnce(lines, "Subcontracted work", terms.subcontracted());
        if (terms.taxPercent().signum() > 0) {
            lines.add(new Line(Line.Kind.TAX, "Tax", terms.taxPercent(), "%", tax(lines, terms)));
        }
        return new Invoice(lines);
    }

    private static BigDecimal markup(BigDecimal cost, Terms terms) {
        return cost.multiply(terms.markupPercent()).movePointLeft(2);
    }

    private static void addOnce(List<Line> lines, String text, BigDecimal amount) {
        if (amount.signum() > 0) {
            lines.add(new Line(Line.Kind.PARTS, text, BigDecimal.ONE, "", Money.rounded(amount)));
        }
    }

    private static BigDecimal tax(List<Line> lines, Terms terms) {
        BigDecimal net = Money.ZERO;
        BigDecimal tax = Money.ZERO;
        for (Line one : lines) {
            net = net.add(one.amount());
            tax = tax.add(Money.percent(one.amount(), terms.taxPercent()));
        }
        return terms.taxEachLine() ? tax : Money.percent(net, terms.taxPercent());
    }

    /** The sum of the lines of one kind. */
    public BigDecimal sum(Line.Kind kind) {
        BigDecimal sum = Money.ZERO;
        for (Line one : lines) {
            sum = one.kind() == kind ? sum.add(one.amount()) : sum;
        }
        return sum;
    }

    public BigDecimal total() {
        BigDecimal sum = Money.ZERO;
        for (Line one : lines) {
            sum = sum.add(one.amount());
        }
        return sum;
    }
}
