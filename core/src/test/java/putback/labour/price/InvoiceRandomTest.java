package putback.labour.price;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import putback.quantity.Minutes;

class InvoiceRandomTest {
    private static final int INVOICES = 5000;

    @Test
    void lines_sums_andTotal_agreeToTheHundredth() {
        for (long seed = 0; seed < INVOICES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Terms terms = terms(random);
            List<Invoice.Labour> labour = labour(random);
            List<Invoice.Bought> bought = bought(random);
            Invoice invoice = Invoice.of(labour, bought, terms);
            BigDecimal lines = BigDecimal.ZERO;
            for (Line line : invoice.lines()) {
                assertThat(line.amount().scale()).as("seed %d", seed).isEqualTo(2);
                lines = lines.add(line.amount());
            }
            assertThat(invoice.total()).as("seed %d", seed).isEqualTo(lines);
            assertThat(invoice.sum(Line.Kind.LABOUR)
                            .add(invoice.sum(Line.Kind.PARTS))
                            .add(invoice.sum(Line.Kind.TAX)))
                    .as("seed %d", seed)
                    .isEqualTo(invoice.total());
            assertThat(invoice.sum(Line.Kind.TAX)).as("seed %d", seed).isEqualTo(tax(invoice, terms));
            inWholeHundredths(invoice, labour, bought, terms, seed);
        }
    }

    /** The same in whole numbers: hundredths times what divides. */
    private static void inWholeHundredths(
            Invoice invoice, List<Invoice.Labour> labour, List<Invoice.Bought> bought, Terms terms, long seed) {
        long rate = terms.ratePerHour().movePointRight(2).longValueExact();
        for (int i = 0; i < labour.size(); i++) {
            long expected = Math.floorDiv(2 * rate * labour.get(i).minutes() + 60, 120);
            assertThat(invoice.lines().get(i).amount().movePointRight(2).longValueExact())
                    .as("labour, seed %d", seed)
                    .isEqualTo(expected);
        }
        long markup = 100 + terms.markupPercent().longValueExact();
        for (int i = 0; i < bought.size(); i++) {
            long cost = bought.get(i).cost().movePointRight(2).longValueExact();
            assertThat(invoice.lines()
                            .get(labour.size() + i)
                            .amount()
                            .movePointRight(2)
                            .longValueExact())
                    .as("parts, seed %d", seed)
                    .isEqualTo(Math.floorDiv(2 * cost * markup + 100, 200));
        }
    }

    private static BigDecimal tax(Invoice invoice, Terms terms) {
        BigDecimal whole = BigDecimal.ZERO;
        BigDecimal each = BigDecimal.ZERO;
        for (Line line : invoice.lines()) {
            if (line.kind() != Line.Kind.TAX) {
                BigDecimal exact = line.amount().multiply(terms.taxPercent()).movePointLeft(2);
                whole = whole.add(exact);
                each = each.add(exact.setScale(2, RoundingMode.HALF_UP));
            }
        }
        return (terms.taxEachLine() ? each : whole).setScale(2, RoundingMode.HALF_UP);
    }

    private static Terms terms(SplittableRandom random) {
        return new Terms(
                BigDecimal.valueOf(random.nextLong(1, 20_000), 2),
                BigDecimal.valueOf(random.nextLong(0, 10_001), 2),
                random.nextBoolean(),
                BigDecimal.valueOf(random.nextLong(0, 60)),
                BigDecimal.valueOf(random.nextLong(0, 3000), 2),
                BigDecimal.valueOf(random.nextLong(0, 3000), 2),
                null);
    }

    private static List<Invoice.Labour> labour(SplittableRandom random) {
        List<Invoice.Labour> labour = new ArrayList<>();
        int count = random.nextInt(1, 4);
        for (int i = 0; i < count; i++) {
            labour.add(new Invoice.Labour("job " + i, random.nextLong(0, 2000)));
        }
        return labour;
    }

    private static List<Invoice.Bought> bought(SplittableRandom random) {
        List<Invoice.Bought> bought = new ArrayList<>();
        int count = random.nextInt(0, 12);
        for (int i = 0; i < count; i++) {
            bought.add(new Invoice.Bought("part " + i, 1, BigDecimal.valueOf(random.nextLong(0, 50_000), 2)));
        }
        return bought;
    }

    @Test
    void wholeMinutes_areSplitExactly_andWithinOneOfTheShare() {
        for (long seed = 0; seed < INVOICES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Minutes> shares = new ArrayList<>();
            long all = 0;
            int jobs = random.nextInt(1, 13);
            for (int i = 0; i < jobs; i++) {
                shares.add(new Minutes(random.nextInt(10) == 0 ? 0 : random.nextLong(1, 200_000_000)));
                all += shares.get(i).millionths();
            }
            long minutes = random.nextLong(0, 3000);
            List<Long> split = WholeSplit.byMinutes(minutes, shares);
            assertThat(split.stream().mapToLong(Long::longValue).sum())
                    .as("seed %d", seed)
                    .isEqualTo(minutes);
            for (int i = 0; i < jobs && all > 0; i++) {
                double exact = (double) minutes * shares.get(i).millionths() / all;
                assertThat((double) split.get(i)).as("seed %d", seed).isBetween(exact - 1, exact + 1);
            }
        }
    }
}
