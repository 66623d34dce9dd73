package putback.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.app.fixtures.Plans;

class JobCardTest {
    private static final JobHead HEAD = JobHead.on(LocalDate.of(2026, 11, 2));

    @Test
    void struts_haveAllOfThePlanOnPaper() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.jobCard(Plans.struts(), HEAD, HouseStyle.PLAIN))) {
            sheets.pictures("job-card");
            assertThat(sheets.text())
                    .contains("Job card", "Renew: Complete strut, left and right", "2026-11-02")
                    .contains("Parts to have ready", "Tools", "Apart", "Together", "Tightening", "Follow-ups")
                    .contains("Strut to hub carrier, left", "18 mm socket held with 18 mm")
                    .contains("60 N·m (44 lbf·ft) threads dry source not given 54 to 66 N·m (40 to 48 lbf·ft)")
                    .contains("second stage", "then 90°", "Read, N·m; by")
                    .contains("Caution: the bar is under twist unless both sides hang");
            assertThat(sheets.drawings()).singleElement().asString().startsWith("The ladder: down the left rail");
            assertThat(sheets.outside()).isEmpty();
            assertThat(sheets.typefaces()).allMatch(name -> name.contains("LiberationSans"));
        }
    }

    @Test
    void letter_isAsLargeAsLetterAndOtherwiseA4() throws IOException {
        HouseStyle letter = HouseStyle.PLAIN.on(PaperSize.LETTER);
        try (Sheets a4 = Sheets.of(Papers.jobCard(Plans.link(), HEAD, HouseStyle.PLAIN));
                Sheets american = Sheets.of(Papers.jobCard(Plans.link(), HEAD, letter))) {
            assertThat(a4.document().getPage(0).getMediaBox().getHeight()).isBetween(841f, 842.5f);
            assertThat(american.document().getPage(0).getMediaBox().getWidth()).isEqualTo(612f);
            assertThat(american.document().getPage(0).getMediaBox().getHeight()).isEqualTo(792f);
        }
    }

    @Test
    void everyPage_hasItsTitleAndNumberAndTableHeadsAreRepeated() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.jobCard(Plans.struts(), HEAD, HouseStyle.PLAIN))) {
            for (int page = 1; page <= sheets.count(); page++) {
                assertThat(sheets.text(page))
                        .contains("Job card: Front strut corner", "Page " + page + " of " + sheets.count());
            }
            assertThat(sheets.text().split("What is done min Done", -1)).hasSizeGreaterThan(4);
        }
    }

    @Test
    void tallLadder_isCutBetweenItsRows() {
        assertThat(LadderPicture.of(Plans.link(), PaperSize.A4)).hasSize(1);
        List<Block> parts = LadderPicture.of(Plans.tall(40), PaperSize.A4);
        assertThat(parts).hasSize(2);
        for (Block part : parts) {
            Block.Picture picture = (Block.Picture) part;
            assertThat(picture.heightMm()).isLessThan(297 - 42);
            assertThat(picture.said()).contains("of 2");
        }
    }
}
