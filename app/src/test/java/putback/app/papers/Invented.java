package putback.app.papers;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import putback.app.text.Headline;
import putback.labour.price.Beliefs;
import putback.labour.price.Estimate;
import putback.labour.price.Estimating;
import putback.labour.price.Job;
import putback.labour.price.Terms;
import putback.labour.seized.RustGrade;
import putback.labour.seized.RustGrades;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.Wanted;
import putback.plan.selection.WantedNames;
import putback.quantity.Parsed;
import putback.sheet.Side;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** An invented garage, its customer and its car. */
final class Invented {
    static final Letterhead GARAGE = new Letterhead(
            "Garage Ostrel & Varn",
            List.of("7 Millrace Lane", "Lower Quennet"),
            "000 555 0142",
            "desk@ostrel-varn.example",
            "QX 000 111 222",
            "Quennet 4711");
    static final CustomerLine CUSTOMER = new CustomerLine(
            "Ilke Sørbråten-Đặng", List.of("12 Ferry Steps", "Upper Quennet"), "000 555 0199", "ilke@example.org");
    static final CarLine CAR =
            new CarLine("Tamsel Dory, small van, 2014", "QX 55 TD", "XX0TD000000000042", "148 210", "148 236");
    static final JobHead HEAD = new JobHead("2026-0117", LocalDate.of(2026, 11, 2), GARAGE, CAR, CUSTOMER, "M. Varn");
    static final HouseStyle EURO =
            new HouseStyle(PaperSize.A4, true, DateOrder.DAY_MONTH_YEAR, false, false, "€", false);
    static final HouseStyle DOLLAR =
            new HouseStyle(PaperSize.LETTER, false, DateOrder.MONTH_DAY_YEAR, true, true, "$", true);

    private Invented() {}

    /** A plan of a stock sheet. */
    static Plan plan(String sheet, String... parts) {
        Read.Sheet read = (Read.Sheet) SheetReader.open(sheet);
        return ((Planned.Sound) Planner.plan(read.assembly(), wanted(read, parts))).plan();
    }

    private static Wanted wanted(Read.Sheet read, String... parts) {
        WantedNames.Understood.Clear clear = (WantedNames.Understood.Clear)
                WantedNames.understand(read.assembly(), List.of(parts), java.util.Set.of(Side.LEFT, Side.RIGHT));
        return clear.wanted();
    }

    /** What the plan costs at 72 an hour and a tax of 20 %, for fasteners with scale on them. */
    static Quote quote(Plan plan, BigDecimal ceiling) {
        Terms terms = new Terms(
                new BigDecimal("72.00"),
                BigDecimal.valueOf(20),
                false,
                BigDecimal.valueOf(15),
                new BigDecimal("6.00"),
                BigDecimal.ZERO,
                ceiling);
        Job job = new Job(Headline.renewed(plan), plan.wanted());
        Parsed<Estimate> estimate =
                Estimating.of(plan, List.of(job), Beliefs.of(RustGrades.all(RustGrade.values()[3])), terms, 1);
        return new Quote(plan, ((Parsed.Value<Estimate>) estimate).value(), null, terms, 3);
    }
}
