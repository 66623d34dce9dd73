package putback.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import putback.app.fixtures.Corner;
import putback.app.fixtures.Journey;
import putback.app.fixtures.Plans;
import putback.plan.Plan;
import putback.plan.Proof;
import putback.plan.selection.Selection;
import putback.plan.selection.Wanted;
import putback.quantity.Minutes;
import putback.sheet.Assembly;
import putback.sheet.JointKind;

/** Papers of plans that no paper was drawn for. */
class UglyPapersTest {
    private static final String SIXTY = "Nut_and_washer_of_the_lower_rear_longitudinal_link_bracket60";

    @Test
    void everyPaper_isTaggedEmbedsItsLettersAndKeepsThemOnThePage() throws IOException {
        for (Map.Entry<String, byte[]> paper :
                papers(Plans.tall(40), Invented.EURO).entrySet()) {
            sound(paper.getKey() + "-40", paper.getValue());
        }
        for (Map.Entry<String, byte[]> paper :
                papers(Plans.awkwardNames(), Invented.DOLLAR).entrySet()) {
            sound(paper.getKey() + "-awkward", paper.getValue());
        }
    }

    @Test
    void fortyJoints_areAllInTheTableAndItsHeadIsRepeated() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.fillInCard(Plans.tall(40), Invented.HEAD, HouseStyle.PLAIN))) {
            String all = sheets.text();
            for (int joint = 1; joint <= 40; joint++) {
                assertThat(all).contains("Joint " + joint + " ");
            }
            for (int page = 1; page <= sheets.count(); page++) {
                assertThat(sheets.text(page)).contains("Fixing, in the order it opens", "Page " + page + " of ");
            }
        }
    }

    @Test
    void signsOfMarkup_arePrintedAsTheyAre() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.jobCard(Plans.awkwardNames(), Invented.HEAD, HouseStyle.PLAIN))) {
            assertThat(sheets.text()).contains("A <corner> & its \"names\"", "Nut & <washer> \"of\" the lower rear");
        }
    }

    @Test
    void lettersThatTheTypefaceLacks_areSaidInWords() throws IOException {
        try (Sheets sheets =
                Sheets.of(Papers.jobCard(named("前輪 Гайка Μπουλόνι אום 🔧"), JobHead.BLANK, HouseStyle.PLAIN))) {
            sheets.pictures("letters");
            assertThat(sheets.text())
                    .contains("[2 Han letters not printable] Гайка Μπουλόνι [3 Hebrew letters not printable]")
                    .contains("[1 sign not printable]", "letters that this typeface does not have")
                    .doesNotContain("#");
            assertThat(sheets.outside()).isEmpty();
        }
    }

    @Test
    void nameOfSixtyLettersWithoutASpace_isBrokenAndNotCut() throws IOException {
        assertThat(SIXTY).hasSize(60);
        try (Sheets sheets = Sheets.of(Papers.fillInCard(named(SIXTY), JobHead.BLANK, HouseStyle.PLAIN))) {
            sheets.pictures("sixty");
            assertThat(sheets.text().replace(" ", "")).contains(SIXTY);
        }
    }

    @Test
    void planThatOpensNothing_saysSo() throws IOException {
        Corner corner = new Corner("bare", "Nothing to open", false).part("arm", "Arm", null);
        corner.joint("bolt", JointKind.BOLT, "arm", "body");
        Plan plan = nothing(corner.assembly());
        for (Map.Entry<String, byte[]> paper : papers(plan, HouseStyle.PLAIN).entrySet()) {
            sound(paper.getKey() + "-empty", paper.getValue());
        }
        try (Sheets card = Sheets.of(Papers.fillInCard(plan, JobHead.BLANK, HouseStyle.PLAIN));
                Sheets record = Sheets.of(Papers.tighteningRecord(plan, List.of(), JobHead.BLANK, HouseStyle.PLAIN))) {
            assertThat(card.text()).contains("Nothing is opened");
            assertThat(record.text()).contains("Nothing is tightened");
        }
    }

    @Test
    void unknownTorqueAndUnknownPrice_lookUnknown() throws IOException {
        try (Sheets sheets = Sheets.of(Papers.jobCard(named("Bolt"), JobHead.BLANK, HouseStyle.PLAIN))) {
            assertThat(sheets.text()).contains("not known", "look it up in the maker's data");
        }
        Plan van = Invented.plan("demo-van", "damper");
        try (Sheets sheets = Sheets.of(Papers.jobCard(van, JobHead.BLANK, HouseStyle.PLAIN))) {
            assertThat(sheets.text()).contains("Damper upper nut, left single-use not known");
        }
    }

    @Test
    void samePaper_isTheSameBytesAndAnotherDayIsNot() {
        JobHead later = new JobHead(
                "2026-0117", LocalDate.of(2026, 11, 3), Invented.GARAGE, Invented.CAR, Invented.CUSTOMER, "M. Varn");
        Plan plan = Plans.link();
        byte[] one = Papers.jobCard(plan, Invented.HEAD, Invented.EURO);
        assertThat(Papers.jobCard(plan, Invented.HEAD, Invented.EURO)).isEqualTo(one);
        assertThat(Papers.jobCard(plan, later, Invented.EURO)).isNotEqualTo(one);
        assertThat(Papers.labels(plan, Invented.HEAD, PaperSize.A4))
                .isEqualTo(Papers.labels(plan, Invented.HEAD, PaperSize.A4));
    }

    @Test
    void day_isTheDayOfTheFileAndWithoutOneTheFileNamesNone() throws IOException {
        try (Sheets dated = Sheets.of(Papers.jobCard(Plans.link(), Invented.HEAD, HouseStyle.PLAIN));
                Sheets undated = Sheets.of(Papers.jobCard(Plans.link(), JobHead.BLANK, HouseStyle.PLAIN))) {
            assertThat(dated.document()
                            .getDocumentInformation()
                            .getCreationDate()
                            .toInstant())
                    .hasToString("2026-11-02T00:00:00Z");
            assertThat(undated.document().getDocumentInformation().getCreationDate())
                    .isNull();
        }
    }

    private static Plan nothing(Assembly assembly) {
        Selection none = new Selection(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Minutes.ZERO);
        return new Plan(
                assembly,
                new Wanted(List.of()),
                none,
                List.of(),
                Minutes.ZERO,
                Minutes.ZERO,
                new Proof(true, Minutes.ZERO),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static Plan named(String name) {
        Corner corner = new Corner("named", name, false).part("arm", "Arm", null);
        corner.joint("bolt", JointKind.BOLT, "arm", "body").name(name).hex(18);
        return Journey.plan(corner.assembly(), List.of("arm"), List.of("bolt"));
    }

    private static Map<String, byte[]> papers(Plan plan, HouseStyle style) {
        Map<String, byte[]> papers = new LinkedHashMap<>();
        papers.put("job-card", Papers.jobCard(plan, Invented.HEAD, style));
        papers.put("labels", Papers.labels(plan, Invented.HEAD, style.paper()));
        papers.put("tightening-record", Papers.tighteningRecord(plan, List.of(), Invented.HEAD, style));
        papers.put("fill-in", Papers.fillInCard(plan, Invented.HEAD, style));
        if (!plan.wanted().targets().isEmpty()) {
            papers.put(
                    "estimate", Papers.estimate(Invented.quote(plan, null), GarageTerms.BLANK, Invented.HEAD, style));
        }
        return papers;
    }

    private static void sound(String name, byte[] pdf) throws IOException {
        try (Sheets sheets = Sheets.of(pdf)) {
            sheets.pictures(name);
            assertThat(sheets.outside()).as(name).isEmpty();
            assertThat(sheets.typefaces()).as(name).allMatch(face -> face.contains("+LiberationSans"));
            assertThat(sheets.document().getDocumentCatalog().getMarkInfo().isMarked())
                    .as(name)
                    .isTrue();
            assertThat(sheets.document()
                            .getDocumentCatalog()
                            .getStructureTreeRoot()
                            .getKids())
                    .as(name)
                    .isNotEmpty();
            assertThat(sheets.drawings()).as(name).noneMatch(String::isBlank);
            assertThat(sheets.document().getDocumentCatalog().getLanguage())
                    .as(name)
                    .isEqualTo("en");
        }
    }
}
