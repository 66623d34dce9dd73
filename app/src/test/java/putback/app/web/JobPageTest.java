package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("browser")
class JobPageTest {
    private static final String JOB = "plan?sheet=demo-van&renew=spring&renew=damper&renew=pads&side=both";

    @RegisterExtension
    private static final Screens SCREENS = new Screens();

    @Test
    void keyboardAlone_choosesAndPlans() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            List<String> faults = new ArrayList<>();
            page.onConsoleMessage(message -> {
                if (message.type().equals("error")) {
                    faults.add(message.text());
                }
            });
            page.navigate(SCREENS.address());
            page.keyboard().press("Tab");
            assertThat(focused(page)).isEqualTo("To the content");
            page.keyboard().press("Enter");
            tabTo(page, "document.activeElement.getAttribute('href') === '/sheet/demo-van'");
            page.keyboard().press("Enter");
            page.waitForURL("**/sheet/demo-van");
            tabTo(page, "document.activeElement.value === 'damper'");
            page.keyboard().press("Space");
            page.waitForSelector("#live .minutes");
            assertThat(page.textContent("#picked")).contains("minutes", "steps");
            tabTo(page, "document.activeElement.name === 'side'");
            page.keyboard().press("ArrowUp");
            tabTo(page, "document.activeElement.tagName === 'BUTTON'");
            page.keyboard().press("Enter");
            page.waitForURL("**/plan?**");
            assertThat(page.textContent("h1")).contains("Rear damper, right").doesNotContain("left");
            tabTo(page, "document.activeElement.tagName === 'SUMMARY'");
            page.keyboard().press("Enter");
            assertThat(page.isVisible("details[open] p")).isTrue();
            assertThat(faults).isEmpty();
        }
    }

    private static Object focused(Page page) {
        return page.evaluate("document.activeElement.textContent");
    }

    private static void tabTo(Page page, String condition) {
        for (int i = 0; i < 200; i++) {
            page.keyboard().press("Tab");
            if (Boolean.TRUE.equals(page.evaluate(condition))) {
                return;
            }
        }
        throw new AssertionError("the keyboard does not come to: " + condition);
    }

    @ParameterizedTest
    @ValueSource(ints = {320, 390, 1280})
    void pages_needNoScrollingSideways(int width) {
        try (BrowserContext context = SCREENS.context(width, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            for (String address : List.of("", "sheet/demo-van", JOB, "no-such-page")) {
                page.navigate(SCREENS.address() + address);
                assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                        .as(address)
                        .isLessThanOrEqualTo(width);
                String name = address.isEmpty() ? "home" : address.split("[?/]", 2)[0];
                Screens.picture(page, name + "-" + width, true);
            }
            page.navigate(SCREENS.address() + JOB);
            assertThat(page.isVisible(".ladder-narrow")).isEqualTo(width < 720);
            assertThat(page.isVisible(".ladder-wide")).isEqualTo(width >= 720);
        }
    }

    @Test
    void everyRequest_goesToTheServerItself() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            List<String> asked = new ArrayList<>();
            page.onRequest(request -> asked.add(request.url()));
            page.navigate(SCREENS.address());
            page.navigate(SCREENS.address() + "sheet/demo-van?renew=pads");
            page.waitForSelector("#live .minutes");
            page.navigate(SCREENS.address() + JOB);
            assertThat(asked).hasSizeGreaterThan(5).allMatch(url -> url.startsWith(SCREENS.address()));
        }
    }

    @Test
    void anEmptyForm_isNotSent_butSaysWhatIsMissing() {
        try (BrowserContext context = SCREENS.context(390, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "sheet/twist-beam");
            page.locator("button").click();
            assertThat(page.url()).endsWith("/sheet/twist-beam");
            assertThat(page.locator("#picked").textContent()).contains("Tick what is to be renewed");
        }
    }

    @Test
    void tray_showsWhatIsMissing_byShapeAndInWords() {
        try (BrowserContext context = SCREENS.context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + JOB);
            assertThat(page.locator(".cut-no .name").allTextContents()).containsExactly("5 mm hex key");
            assertThat(page.locator(".cut-no path.shape-no").count()).isEqualTo(1);
            assertThat(page.locator(".cut-instead .have").first().textContent())
                    .contains("not there: the 15 mm socket");
            assertThat(page.locator("[id^='step-'] .wrench").allTextContents())
                    .anyMatch(wrench -> wrench.contains("W3 (large): set 110 N·m"));
            page.locator(".tray").first().scrollIntoViewIfNeeded();
            Screens.picture(page, "tray-1280", false);
        }
    }

    @Test
    void withoutScript_theButtonPlans() {
        try (BrowserContext context = SCREENS.withoutScript()) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + "sheet/demo-van");
            page.check("input[value=pads]");
            page.click("button");
            assertThat(page.textContent("h1")).contains("Brake pads, left and right");
        }
    }

    @Test
    void paper_showsTheWideLadderAndNoForm() {
        try (BrowserContext context = SCREENS.context(390, ColorScheme.DARK)) {
            Page page = context.newPage();
            page.navigate(SCREENS.address() + JOB);
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertThat(page.isVisible(".ladder-wide")).isTrue();
            assertThat(page.isVisible(".ladder-narrow")).isFalse();
            assertThat(page.evaluate("getComputedStyle(document.body).backgroundColor"))
                    .isEqualTo("rgb(255, 255, 255)");
        }
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,1280", "DARK,1280", "LIGHT,390", "DARK,390"})
    void accessibilityRules_findNothing(ColorScheme scheme, int width) {
        try (BrowserContext context = SCREENS.context(width, scheme)) {
            Page page = context.newPage();
            for (String address : List.of("", "sheet/demo-van", "sheet/demo-van?renew=pads", JOB, "no-such-page")) {
                page.navigate(SCREENS.address() + address);
                if (address.contains("pads") && address.startsWith("sheet")) {
                    page.waitForSelector("#live .minutes");
                }
                List<Rule> violations = new AxeBuilder(page).analyze().getViolations();
                assertThat(violations)
                        .as(address)
                        .extracting(rule -> rule.getId() + ": " + rule.getHelp() + " "
                                + rule.getNodes().get(0).getHtml())
                        .isEmpty();
            }
            page.navigate(SCREENS.address() + JOB);
            Screens.picture(page, "plan-top-" + width + "-" + scheme.name().charAt(0), false);
            page.locator(".steps").first().scrollIntoViewIfNeeded();
            page.evaluate("document.querySelectorAll('.steps')[0].scrollIntoView()");
            Screens.picture(page, "plan-steps-" + width + "-" + scheme.name().charAt(0), false);
        }
    }
}
