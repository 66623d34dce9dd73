package putback.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.app.fixtures.Plans;
import putback.plan.Plan;
import putback.quantity.Torque;

class RecordsTest {
    @Test
    void tighteningRecord_saysWhatWasAskedAndWhatWasRead() throws IOException {
        Plan plan = Plans.struts();
        List<Reading> readings = List.of(
                new Reading("left.top-nuts", new Torque(23.2), "M. Varn", "14:05", "", "W2", ""),
                new Reading("left.wheel-nuts", new Torque(120), "M. Varn", "15:40", "O. Ostrel", "W1", ""),
                new Reading("cowl-screws", null, "M. Varn", "15:02", "", "", "no figure found in the maker's data"));
        byte[] pdf = Papers.tighteningRecord(plan, readings, Invented.HEAD, Invented.EURO);
        try (Sheets sheets = Sheets.of(pdf)) {
            sheets.pictures("tightening-record");
            assertThat(sheets.text())
                    .contains("Tightening record, job 2026-0117", "O. Ostrel", "W1", "15:40")
                    .contains("outside what it may be");
            assertThat(sheets.outside()).isEmpty();
        }
    }

    @Test
    void fillInCard_hasALineForEachOpenedJoint() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.fillInCard(Plans.struts(), Invented.HEAD, HouseStyle.PLAIN))) {
            sheets.pictures("fill-in");
            assertThat(sheets.text()).contains("Fill-in card", "Strut to hub carrier, left", "Source of the torque");
            assertThat(sheets.outside()).isEmpty();
        }
    }

    @Test
    void handover_saysWhatWasDoneFoundDeclinedAndWhenToComeBack() throws IOException {
        Quote quote = Invented.quote(Invented.plan("demo-van", "damper"), new BigDecimal("500.00"));
        Handover handover = new Handover(
                "Tamsel Dory, small van",
                "",
                List.of("Renewed the rear dampers, left and right.", "Wheel nuts tightened on the ground, by W1."),
                List.of("Before: bangs over every bump.", "After, the same road: quiet."),
                quote.estimate().invoice(),
                List.of("6 × Damper bolt: without a price"),
                List.of(
                        new Finding(
                                Finding.Kind.DECLINED_SAFETY,
                                "Brake hose, rear left, cracked to the cords",
                                "stop driving",
                                "M. Varn",
                                "Next month, I only drive to the ferry."),
                        new Finding(Finding.Kind.OPEN, "Lowest coil of the left spring rusted", "soon", "", ""),
                        new Finding(Finding.Kind.DECLINED, "Wiper torn", "watch", "M. Varn", "")),
                List.of(),
                List.of("The pedal is firm; the first stops may be longer.", "A knock from behind: come back at once."),
                GarageTerms.BLANK,
                new Recheck(50, LocalDate.of(2026, 11, 16), new Torque(90), "garage's own record"));
        try (Sheets sheets = Sheets.of(Papers.handover(handover, Invented.HEAD, Invented.EURO))) {
            sheets.pictures("handover");
            assertThat(sheets.text())
                    .contains(
                            "What was done",
                            "Invoice",
                            "Total",
                            "Not in this total",
                            "6 × Damper bolt: without a price")
                    .contains("declined: the car is not safe with it")
                    .contains("How urgent: stop driving", "written down by M. Varn", "not answered yet")
                    .contains("“Next month, I only drive to the ferry.”", "Recheck card", "about 50 km", "16.11.2026")
                    .contains("90 N·m (66 lbf·ft)", "source: garage's own record", "not legal advice")
                    .doesNotContain("What may come of it", "Draft");
            assertThat(sheets.text().split("“", -1))
                    .as("only what the owner said is quoted")
                    .hasSize(2);
            assertThat(sheets.outside()).isEmpty();
        }
    }

    @Test
    void handoverOfAJobThatIsNotDone_saysThatItIsADraft() throws IOException {
        Handover handover = new Handover(
                "Tamsel Dory, small van",
                "The job is agreed, and nothing has come apart yet.",
                List.of("Rear damper, left"),
                List.of("Before: bangs over every bump."),
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                GarageTerms.BLANK,
                null);
        try (Sheets sheets = Sheets.of(Papers.handover(handover, JobHead.BLANK, HouseStyle.PLAIN))) {
            assertThat(sheets.text())
                    .contains("Draft, not to be handed over", "nothing has come apart yet", "What is to be done")
                    .contains("Invoice, draft", "Road tests")
                    .doesNotContain("What was done");
        }
    }

    @Test
    void carThatStillOwes_isGivenBackWithAWarningAndAnUnknownTorqueStaysUnknown() throws IOException {
        Handover handover = new Handover(
                "Tamsel Dory, small van",
                "",
                List.of(),
                List.of(),
                null,
                List.of(),
                List.of(),
                List.of("Wheel angles not checked, M. Varn: no appointment before Thursday."),
                List.of(),
                GarageTerms.BLANK,
                new Recheck(100, null, null, ""));
        try (Sheets sheets = Sheets.of(Papers.handover(handover, JobHead.BLANK, Invented.DOLLAR))) {
            sheets.pictures("handover-owes");
            assertThat(sheets.text())
                    .contains("Not to be driven. This is still open:", "Wheel angles not checked, M. Varn")
                    .contains("Nothing to pay.", "Nothing else was written down.", "about 60 mi")
                    .contains("Torque: not known. It is looked up in the maker's data, never guessed.");
            assertThat(sheets.outside()).isEmpty();
        }
    }

    @Test
    void lineThatNobodyHasRead_isLeftToAPen() throws IOException {
        byte[] pdf = Papers.tighteningRecord(Plans.link(), List.of(), JobHead.BLANK, HouseStyle.PLAIN);
        try (Sheets sheets = Sheets.of(pdf)) {
            assertThat(sheets.text())
                    .contains("Asked for", "A reading may be", "Second look by", "Signature")
                    .doesNotContain("no torque read", "outside what it may be");
        }
    }
}
