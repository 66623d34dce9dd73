package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
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

    @Test
    void typingReadings_answersWithoutAButton() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "angles");
            page.fill("input[name='front.left.toe']", "0°15'");
            page.fill("input[name='front.right.toe']", "0.05 deg");
            page.waitForSelector("pre.report:has-text('0.05')");
            assertThat(page.textContent(".report")).contains("0.25", "(0°18')");
            assertThat(page.isVisible(".drawing svg")).isTrue();
            page.fill("input[name='front.right.toe']", "green");
            page.waitForSelector(".fault");
            assertThat(page.textContent(".fault")).contains("green");
        }
    }

    @Test
    void aToeWithoutItsUnit_isRefused_whetherMillimetresAreExpectedOrNot_andABareCamberIsDegrees() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            for (String more : new String[] {"", "&toe-read-at=406.4+mm"}) {
                page.navigate(SCREENS.address() + "angles?front.left.toe=3&front.right.toe=0+deg" + more);
                assertThat(page.textContent(".fault")).contains("toe", "\"3\" has no unit; write a toe as 0.10 deg");
                assertThat(page.locator(".report").count()).isZero();
            }
            page.navigate(SCREENS.address() + "angles?front.left.camber=-0.5");
            assertThat(page.textContent(".report")).contains("-0.50");
        }
    }

    @Test
    void aWholeFile_saysWhatToTurn_withoutScriptToo() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "angles");
            page.click("summary");
            page.fill("textarea", FILE);
            page.click("button");
            assertThat(page.textContent(".report")).contains("Left rod: 0.57 turn (about 9/16)");
            assertThat(page.inputValue("textarea")).contains("left-rod");
        }
    }

    @Test
    void theSlider_movesTheCorner() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "corner");
            assertThat(page.textContent(".report")).contains("-1.909");
            page.focus("input[name=travel]");
            for (int i = 0; i < 8; i++) {
                page.keyboard().press("ArrowRight");
            }
            page.waitForSelector("pre.report:has-text('-2.797')");
            assertThat(page.textContent(".drawing")).contains("travel of 40 mm");
            page.click("summary");
            page.fill("textarea", "suspension: rocket");
            page.waitForSelector(".fault");
            assertThat(page.textContent(".fault")).contains("line 1");
        }
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,1280", "DARK,1280", "LIGHT,390", "DARK,320"})
    void pages_fit_andBreakNoRuleOfAccess(ColorScheme scheme, int width) {
        try (BrowserContext context = SCREENS.context(width, scheme)) {
            Page page = context.newPage();
            for (String address :
                    new String[] {"angles", "angles?front.left.toe=0.2+deg&front.right.toe=0+deg", "corner"}) {
                page.navigate(SCREENS.address() + address);
                assertThat(new AxeBuilder(page).analyze().getViolations())
                        .as(address)
                        .isEmpty();
                assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                        .as(address)
                        .isLessThanOrEqualTo(width);
                Screens.picture(page, address.replaceAll("[?].*", "-read") + "-" + width + "-" + scheme, true);
            }
        }
    }
}
