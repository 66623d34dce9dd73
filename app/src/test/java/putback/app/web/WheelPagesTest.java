package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("browser")
class WheelPagesTest {
    @RegisterExtension
    private static final Screens SCREENS = new Screens();

    private static final String FILE = """
            front: {left: {toe: 0.2 deg}, right: {toe: 0 deg}}
            rear: {left: {toe: 0 deg}, right: {toe: 0 deg}}
            steering-ratio: 16
            adjusters:
              left-rod: {front.left.toe: 0.35 deg, per: turn, range: [-6, 6]}
            """;

    private static final String WANTED = "angles?front.left.toe=0.2+deg&front.right.toe=0+deg&front.left.camber=-0.5"
            + "&front.right.camber=-0.4&front.left.caster=3&front.right.caster=3.1"
            + "&rear.left.toe=0+deg&rear.right.toe=0.08+deg&rear.left.camber=-1.2&rear.right.camber=-1.1"
            + "&steering-ratio=16&toe-read-at=406.4+mm"
            + "&wanted.front.total-toe.from=0&wanted.front.total-toe.to=0.2+deg"
            + "&wanted.front.cross-camber.from=-0.5&wanted.front.cross-camber.to=0.5"
            + "&wanted.rear.thrust.from=-0.1&wanted.rear.thrust.to=0.1"
            + "&turn.front.left.toe.by=0.35+deg&same.front=yes";

    @Test
    void typingReadings_answersWithoutAButton_andSaysWhatIsWrongAtItsField() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "angles");
            page.fill("input[name='front.left.toe']", "0°15'");
            page.fill("input[name='front.right.toe']", "0.05 deg");
            page.waitForSelector("td:has-text('total 0.30 deg')");
            assertThat(page.isVisible(".drawn-wide svg")).isTrue();
            assertThat(page.isVisible(".drawn-narrow svg")).isFalse();
            page.fill("input[name='front.right.toe']", "green");
            page.waitForSelector("label:has(input[name='front.right.toe'][aria-invalid]) small.wrong");
            assertThat(page.textContent("small.wrong")).contains("green");
            assertThat(page.textContent(".fault")).contains("front right toe: ", "green");
            page.fill("input[name='front.right.toe']", "0 deg");
            page.waitForSelector(".drawn-wide svg");
            assertThat(page.locator("small.wrong").count()).isZero();
        }
    }

    @Test
    void rangesAndRods_saidInFields_answerTheHeadline_withoutScriptToo() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + WANTED);
            assertThat(page.textContent("ol.turning")).contains("Front left toe: 0.", "Front right toe: 0.");
            assertThat(page.textContent(".wheels")).contains("Then the steering wheel stands straight.", "inside");
            assertThat(page.isVisible("input[name='turn.front.left.toe.by']")).isTrue();
            page.fill("input[name='turn.front.left.toe.from']", "-0.1");
            page.fill("input[name='turn.front.left.toe.to']", "0.1");
            page.click("text=Reckon");
            assertThat(page.textContent(".notes")).contains("What stops it: front-left-toe, at its end");
        }
    }

    @Test
    void theReadings_goOnPaper_fromTheSameFields() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            APIResponse paper = page.request().get(SCREENS.address() + WANTED.replace("angles?", "angles.pdf?"));
            assertThat(paper.headers().get("content-type")).isEqualTo("application/pdf");
            assertThat(new String(paper.body(), StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
            APIResponse nothing = page.request().get(SCREENS.address() + "angles.pdf?front.left.toe=3");
            assertThat(nothing.status()).isEqualTo(422);
            assertThat(nothing.text()).contains("has no unit");
        }
    }

    @Test
    void aToeWithoutItsUnit_isRefused_whetherMillimetresAreExpectedOrNot_andABareCamberIsDegrees() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            for (String more : new String[] {"", "&toe-read-at=406.4+mm"}) {
                page.navigate(SCREENS.address() + "angles?front.left.toe=3&front.right.toe=0+deg" + more);
                assertThat(page.textContent(".fault")).contains("toe", "\"3\" has no unit; write a toe as 0.10 deg");
                assertThat(page.locator(".stacks").count()).isZero();
            }
            page.navigate(SCREENS.address() + "angles?front.left.camber=-0.5");
            assertThat(page.textContent(".stacks")).contains("-0.50");
        }
    }

    @Test
    void aWholeFile_saysWhatToTurn_withoutScriptToo() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "angles");
            page.click("summary:has-text('whole file')");
            page.fill("textarea", FILE);
            page.click("text=Reckon");
            assertThat(page.textContent("ol.turning")).contains("Left rod: 0.57 turn (about 9/16)");
            assertThat(page.inputValue("textarea")).contains("left-rod");
        }
    }

    @Test
    void theSlider_movesTheCorner_whichIsAnExampleUntilPointsAreGiven() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "corner");
            assertThat(page.textContent(".example")).contains("Invented example");
            assertThat(page.textContent(".travel")).contains("-1.909");
            page.focus("input[name=travel]");
            for (int i = 0; i < 8; i++) {
                page.keyboard().press("ArrowRight");
            }
            page.waitForSelector("table.travel:has-text('-2.797')");
            assertThat(page.textContent(".drawn-wide")).contains("travel of 40 mm");
            page.click("summary:has-text('points of your own')");
            page.fill("input[name='s.ball-joint.x']", "5");
            page.waitForSelector(".example:has-text('Still to be typed')");
            page.click("text=double wishbone");
            assertThat(page.isVisible("input[name='s.ball-joint.x']")).isFalse();
            assertThat(page.isVisible("input[name='w.upper-ball.x']")).isTrue();
            page.click("summary:has-text('whole file')");
            page.fill("textarea", "suspension: rocket");
            page.waitForSelector(".fault");
            assertThat(page.textContent(".fault")).contains("line 1");
        }
    }

    @Test
    void aSeizedFastener_isAnsweredWhileOneTicks_andTheMenuLeadsThere() {
        try (BrowserContext context = SCREENS.context(390, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address());
            page.click("nav a:has-text('More')");
            page.click("main a:has-text('will not move')");
            page.selectOption("select[name=refuses]", "stuck");
            page.waitForSelector("ol.turning li:has-text('heat')");
            assertThat(page.textContent(".cautions")).contains("Nobody has said what is near");
            page.check("input[value=gas]");
            page.waitForSelector("h2:has-text('Not here')");
            assertThat(page.textContent(".warnings")).contains("heat", "filled with gas may burst");
            assertThat(page.textContent("ol.turning")).doesNotContain("heat");
            page.fill("input[name=thread]", "Q");
            page.waitForSelector("label:has(input[name=thread][aria-invalid]) small.wrong");
        }
    }

    @Test
    void twoRecordsOfAPhone_areCompared_andAWrongFileIsToldShortly() {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 200; i++) {
            double t = i / 100.0;
            rows.append(t)
                    .append(',')
                    .append(-40 * Math.exp(-1.5 * t) * Math.cos(9 * t))
                    .append('\n');
        }
        FilePayload record =
                new FilePayload("phone.csv", "text/csv", rows.toString().getBytes(StandardCharsets.UTF_8));
        FilePayload wrong = new FilePayload(
                "run.sh", "text/plain", "echo a b c\n".repeat(300).getBytes(StandardCharsets.UTF_8));
        try (BrowserContext context = SCREENS.context(390, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "bounce");
            page.setInputFiles("input[name=first]", record);
            page.setInputFiles("input[name=second]", record);
            page.click("text=Reckon");
            assertThat(page.textContent(".verdict")).contains("Both sides are damped much alike.");
            assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
            Screens.picture(page, "bounce-read", true);
            page.setInputFiles("input[name=first]", wrong);
            page.click("text=Reckon");
            assertThat(page.locator(".fault li").count()).isEqualTo(11);
        }
    }

    @Test
    void inTheDark_theDrawingsTakeThePagesColours() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.DARK)) {
            Page page = context.newPage();
            for (String address : new String[] {WANTED, "corner"}) {
                page.navigate(SCREENS.address() + address);
                assertThat(page.evaluate("getComputedStyle(document.querySelector('.drawn-wide svg .paper')).fill")
                                .toString())
                        .isEqualTo("rgb(16, 36, 60)");
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,1280", "DARK,1280", "LIGHT,390", "DARK,390", "DARK,320"})
    void pages_fit_andBreakNoRuleOfAccess(ColorScheme scheme, int width) {
        try (BrowserContext context = SCREENS.context(width, scheme)) {
            Page page = context.newPage();
            for (String[] one : new String[][] {
                {"angles", "angles"},
                {"angles-wanted", WANTED},
                {"angles-wrong", "angles?front.left.toe=3&wanted.front.camber.from=1&turn.rear.left.toe.by=4"},
                {"corner", "corner?travel=40"},
                {"corner-own", "corner?travel=-40&s.ball-joint.x=5&suspension=strut"},
                {"corner-wishbone", "corner?travel=0&suspension=double+wishbone"},
                {"stuck", "stuck"},
                {"stuck-near", "stuck?thread=M12&kind=bolt&rust=3&refuses=stuck&near=hose&near=gas"},
                {"stuck-wrong", "stuck?thread=Q12&kind=nut&refuses=in+bore"},
                {"bounce", "bounce"},
                {"bush", "bush?arm=350&ride=-15&tightened=-100"},
                {"more", "more"}
            }) {
                page.navigate(SCREENS.address() + one[1]);
                assertThat(new AxeBuilder(page).analyze().getViolations())
                        .as(one[0])
                        .isEmpty();
                assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                        .as(one[0])
                        .isLessThanOrEqualTo(width);
                assertThat((Boolean) page.evaluate(
                                "[...document.querySelectorAll('main svg')].filter(s => s.checkVisibility())"
                                        + ".every(s => s.getBoundingClientRect().right <= innerWidth)"))
                        .as(one[0])
                        .isTrue();
                Screens.picture(page, one[0] + "-" + width + "-" + scheme, true);
            }
        }
    }
}
