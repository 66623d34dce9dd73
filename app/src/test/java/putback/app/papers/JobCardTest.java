package putback.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import putback.app.fixtures.Plans;

class JobCardTest {
    private static final JobHead HEAD = JobHead.on(LocalDate.of(2026, 11, 2));

    @Test
    void struts_haveAllOfThePlanOnPaper() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.jobCard(Plans.struts(), HEAD, HouseStyle.PLAIN))) {
            sheets.pictures("job-card");
            assertThat(sheets.text()).contains("Job card");
            assertThat(sheets.outside()).isEmpty();
            assertThat(sheets.typefaces()).allMatch(name -> name.contains("LiberationSans"));
        }
    }
}
