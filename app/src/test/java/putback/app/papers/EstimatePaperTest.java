package putback.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import putback.app.fixtures.Plans;

class EstimatePaperTest {
    @Test
    void estimate_saysPriceThreeFiguresCeilingAndWhatMayChangeIt() throws IOException {
        Quote quote = Invented.quote(Invented.plan("demo-van", "spring", "damper"), new BigDecimal("500.00"));
        byte[] pdf = Papers.estimate(quote, GarageTerms.BLANK, Invented.HEAD, Invented.EURO);
        try (Sheets sheets = Sheets.of(pdf)) {
            sheets.pictures("estimate");
            String total = Invented.EURO.money(quote.estimate().invoice().total());
            assertThat(sheets.text())
                    .contains("Garage Ostrel & Varn", "Ilke Sørbråten-Đặng", "Tax no. QX 000 111 222", "02.11.2026")
                    .contains(
                            "Likely",
                            "4 jobs in 5 are done, or stopped to ask, within",
                            "jobs in 100 end at a fixing that will not move whatever is tried",
                            "Stop and call before",
                            "Suggested, and not in this price",
                            "Up to 500,00 €, with tax")
                    .contains("Rust: reckoned for grade 3 of 4", "not legal advice", "Who said yes")
                    .contains(total.replace("\u00a0", " "));
            assertThat(sheets.outside()).isEmpty();
            assertThat(sheets.typefaces()).isNotEmpty().allMatch(name -> name.contains("LiberationSans"));
        }
    }

    @Test
    void everyFieldThatALawMayWant_isThereThoughNobodyKnowsIt() throws IOException {
        Quote quote = Invented.quote(Plans.link(), null);
        try (Sheets sheets = Sheets.of(Papers.estimate(quote, GarageTerms.BLANK, JobHead.BLANK, Invented.DOLLAR))) {
            sheets.pictures("estimate-letter");
            assertThat(sheets.text())
                    .contains("Job number", "Odometer, mi", "VIN", "Plate", "Customer", "Mechanic")
                    .contains(
                            "Complaint, in the customer's words",
                            "This estimate holds until",
                            "Charge for this estimate")
                    .contains(
                            "Charge for taking apart",
                            "Charge for putting together again",
                            "Parts that taking apart destroys")
                    .contains("Old parts", "Warranty", "Storage", "certificate numbers", "Complaints go to")
                    .contains("none has been named", "A yes is asked for up to", "A part is new unless");
        }
    }
}
