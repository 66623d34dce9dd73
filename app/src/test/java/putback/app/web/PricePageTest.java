package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("browser")
class PricePageTest {
    private static final String JOB =
            "price?sheet=demo-van&renew=spring&renew=damper&renew=pads&side=both&rust=3&tax=20&ceiling=420";

    @RegisterExtension
    private static final Screens SCREENS = new Screens();

    @Test
    void tickingANeighbour_movesItToWhatIsRenewed_andThePriceFollows() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + JOB);
            String before = page.textContent("tfoot");
            page.check("input[name=renew][value='left.bump-stop']");
            page.waitForSelector("fieldset input[value='left.bump-stop']:checked");
            assertThat(page.textContent("tfoot")).isNotEqualTo(before);
            page.waitForSelector("table.alongside");
            page.waitForURL("**renew=left.bump-stop**");
        }
    }

    @Test
    void typingACeiling_drawsItIn_andSaysTheOdds() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + JOB.replace("&ceiling=420", ""));
            assertThat(page.locator(".over").count()).isZero();
            page.fill("input[name=ceiling]", "400");
            page.waitForSelector(".over");
            assertThat(page.textContent(".over")).contains("Above the ceiling of 400.00");
            assertThat(page.locator(".curve-wide path.ceiling").count()).isEqualTo(1);
            page.fill("input[name=ceiling]", "-1");
            page.waitForSelector(".fault");
            assertThat(page.getAttribute("input[name=ceiling]", "aria-invalid")).isEqualTo("true");
        }
    }

    @Test
    void gradeOfOneFixing_changesThePrice_andTheTableStaysOpen() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + JOB);
            String before = page.textContent("table.sure");
            page.click("details.grades summary");
            page.selectOption("select[name='rust.left.damper-lower']", "4");
            page.waitForSelector(".terms:has-text('left.damper-lower 4')");
            assertThat(page.textContent("table.sure")).isNotEqualTo(before);
            page.waitForURL("**rust.left.damper-lower=4**");
            assertThat(page.isVisible("select[name='rust.left.damper-lower']")).isTrue();
        }
    }

    @Test
    void severalHands_workOfOthers_andTaxLineByLine_areOnThePageToo() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + JOB + "&hands=2&subcontracted=40.00&tax-on=line");
            assertThat(page.textContent(".priced"))
                    .contains("With several hands the car stands", "Subcontracted work", "40.00")
                    .contains("rounded line by line", "2 pairs of hands");
        }
    }

    @Test
    void withoutScript_theButtonReckons() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + JOB);
            page.fill("input[name=rate]", "90");
            page.click("button");
            assertThat(page.textContent(".priced")).contains("150.00");
        }
    }

    @Test
    void paper_showsThePriceAndItsTerms() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.DARK)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + JOB);
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertThat(page.isVisible("tfoot")).isTrue();
            assertThat(page.isVisible(".curve-wide")).isTrue();
            assertThat(page.isVisible("#price button")).isFalse();
            Screens.picture(page, "price-print", true);
        }
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,1280", "DARK,1280", "LIGHT,390", "DARK,390", "LIGHT,320"})
    void page_fits_andBreaksNoRuleOfAccess(ColorScheme scheme, int width) {
        try (BrowserContext context = SCREENS.context(width, scheme)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + JOB);
            assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
            assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                    .isLessThanOrEqualTo(width);
            Screens.picture(page, "price-" + width + "-" + scheme, true);
        }
    }
}
