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
class TighteningPageTest {
    private static final String ASKED = "tightening?thread=M12x1.25&class=8.8&torque=66+N%C2%B7m&hex=18+mm";

    @RegisterExtension
    private static final Screens SCREENS = new Screens();

    @Test
    void typing_answersWithoutAButton_andTheAddressKeepsIt() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "tightening");
            page.locator("input[name=thread]").focus();
            page.keyboard().type("M12x1.25");
            page.keyboard().press("Tab");
            page.keyboard().type("8.8");
            page.keyboard().press("Tab");
            page.keyboard().type("66 N.m");
            page.waitForSelector(".verdict");
            assertThat(page.textContent(".verdict")).contains("the figure alone cannot tell");
            assertThat(page.textContent(".figures")).contains("35.1 kN (7880 lbf)");
            assertThat(page.isVisible("svg.fastener")).isTrue();
            page.waitForURL("**/tightening?thread=M12x1.25**");
        }
    }

    @Test
    void whatCannotBe_isNamed_andItsFieldMarked_andNothingTypedIsLost() {
        try (BrowserContext context = SCREENS.context(390, ColorScheme.DARK)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + ASKED);
            page.locator("input[name=thread]").fill("M13x1.3");
            page.waitForSelector(".fault");
            assertThat(page.textContent(".fault")).contains("M13");
            assertThat(page.getAttribute("input[name=thread]", "aria-invalid")).isEqualTo("true");
            assertThat(page.inputValue("input[name=torque]")).isEqualTo("66 N·m");
            Screens.picture(page, "tightening-fault-390", true);
            page.locator("input[name=thread]").fill("M12");
            page.waitForSelector(".verdict");
            assertThat(page.getAttribute("input[name=thread]", "aria-invalid")).isNull();
        }
    }

    @Test
    void withoutScript_theButtonAnswers() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "tightening");
            page.fill("input[name=thread]", "1/2-20");
            page.fill("input[name=class]", "SAE 5");
            page.fill("input[name=torque]", "75 lbf-ft");
            page.click("button");
            assertThat(page.textContent(".figures")).contains("75 lbf·ft");
        }
    }

    @Test
    void aTorqueAtWhichTheBoltYields_getsNoSettingOfAnyWrench() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            String breaking = "tightening?thread=M12x1.25&class=12.9&torque=300+N%C2%B7m";
            for (String address : new String[] {breaking, breaking + "&wrench=400mm&adapter=50mm"}) {
                page.navigate(SCREENS.address() + address);
                assertThat(page.textContent(".verdict")).contains("The bolt yields");
                assertThat(page.textContent("ul.wrench"))
                        .contains("No setting: the bolt yields")
                        .doesNotContain("Set the", "set 300");
            }
        }
    }

    @Test
    void torqueAndAdapterWithoutAThread_giveTheSetting_andWhatIsMissingIsNamed() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "tightening?torque=90+N%C2%B7m&wrench=400mm&adapter=50mm");
            assertThat(page.textContent("ul.wrench")).contains("Set the wrench to 80 N·m");
            assertThat(page.textContent(".lead")).contains("Still to be typed: the thread and the class.");
            page.navigate(SCREENS.address() + "tightening?thread=M12");
            assertThat(page.textContent(".lead")).contains("Still to be typed: the class and a torque.");
        }
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,1280", "DARK,1280", "LIGHT,390", "DARK,390", "LIGHT,320"})
    void page_fits_andBreaksNoRuleOfAccess(ColorScheme scheme, int width) {
        try (BrowserContext context = SCREENS.context(width, scheme)) {
            Page page = context.newPage();
            for (String address : new String[] {"tightening", ASKED, "tightening?thread=x&class=8.8&torque=1"}) {
                page.navigate(SCREENS.address() + address);
                assertThat(new AxeBuilder(page).analyze().getViolations())
                        .as(address)
                        .isEmpty();
                assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                        .as(address)
                        .isLessThanOrEqualTo(width);
            }
            page.navigate(SCREENS.address() + ASKED);
            Screens.picture(page, "tightening-" + width + "-" + scheme, true);
        }
    }
}
