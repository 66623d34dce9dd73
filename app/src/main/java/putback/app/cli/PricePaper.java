package putback.app.cli;

import org.jspecify.annotations.Nullable;
import putback.app.papers.GarageTerms;
import putback.app.papers.HouseStyle;
import putback.app.papers.JobHead;
import putback.app.papers.Papers;
import putback.app.papers.Quote;
import putback.labour.price.Estimate;
import putback.labour.price.Terms;
import putback.labour.time.DrawnTimes;
import putback.plan.Plan;

/** Writes the estimate as a paper. */
final class PricePaper {
    private PricePaper() {}

    /** What was reckoned. */
    record Priced(Plan plan, Estimate estimate, @Nullable DrawnTimes standing, Terms terms, int rust) {}

    static int write(Priced priced, Arguments arguments, Terminal terminal) throws UsageFault {
        HouseStyle style = PaperOptions.style(PriceCommand.NAME, arguments);
        JobHead head = PaperOptions.head(PriceCommand.NAME, arguments);
        Quote quote = new Quote(priced.plan(), priced.estimate(), priced.standing(), priced.terms(), priced.rust());
        byte[] pdf = Papers.estimate(quote, GarageTerms.BLANK, head, style);
        return PdfFile.write(pdf, arguments.value("--pdf").orElse(""), terminal);
    }
}
