package putback.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import putback.app.fixtures.Plans;
import putback.plan.Plan;

class LabelSheetTest {
    @Test
    void a4_holdsTwentyFourInTheOrderOfRemoval() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.labels(Plans.struts(), Invented.HEAD, PaperSize.A4))) {
            sheets.pictures("labels-a4");
            assertThat(sheets.count()).isEqualTo(1);
            assertThat(sheets.text()).contains("Bag 1", "Wiper arm nuts", "Wheel nuts", "job 2026-0117", "single-use");
            assertThat(sheets.outside()).isEmpty();
        }
    }

    @Test
    void letter_holdsThirtyAndARollOneAPage() throws IOException {
        Plan plan = Plans.tall(40);
        try (Sheets letter = Sheets.of(Papers.labels(plan, Invented.HEAD, PaperSize.LETTER));
                Sheets roll = Sheets.of(Papers.labels(plan, Invented.HEAD, PaperSize.ROLL))) {
            letter.pictures("labels-letter");
            roll.pictures("labels-roll");
            PDRectangle page = roll.document().getPage(0).getMediaBox();
            assertThat(page.getWidth()).isBetween(175.5f, 176f);
            assertThat(page.getHeight()).isBetween(82f, 82.4f);
            int labels = roll.count();
            assertThat(labels).isGreaterThan(20);
            assertThat(letter.count()).isEqualTo((labels + 29) / 30);
            assertThat(roll.text(labels)).contains("Bag " + labels);
            assertThat(letter.outside()).isEmpty();
            assertThat(roll.outside()).isEmpty();
        }
    }

    @Test
    void longNames_endAboveTheEdgeOfTheirLabel() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.labels(Plans.awkwardNames(), Invented.HEAD, PaperSize.LETTER))) {
            assertThat(sheets.text()).contains("Bag 2", "single-use", "job 2026-0117");
            assertThat(sheets.lowest()).isLessThan((12.7 + 25.4 - 1.5) * 72 / 25.4);
        }
    }

    @Test
    void code_isReadFromThePrintedLabel() throws Exception {
        try (Sheets roll = Sheets.of(Papers.labels(Plans.struts(), Invented.HEAD, PaperSize.ROLL));
                Sheets plain = Sheets.of(Papers.labels(Plans.struts(), JobHead.BLANK, PaperSize.ROLL))) {
            assertThat(roll.qr(4)).isEqualTo("JOB 2026-0117 BAG 4 left.wheel-nuts");
            assertThat(plain.qr(9)).isEqualTo("BAG 9 left.strut-to-hub");
        }
    }
}
