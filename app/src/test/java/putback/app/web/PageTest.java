package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages in a real browser. */
@Tag("browser")
class PageTest {
    private static final String JOB = "/plan?sheet=demo-van&renew=spring&renew=damper&renew=pads&side=both";
    private static final List<String> PAGES =
            List.of("/", "/sheet/front-strut", JOB, "/plan?sheet=demo-van&renew=sprong");

    private static Server server;
    private static Playwright playwright;
    private static Browser browser;

    @BeforeAll
    static void start() {
        server = Server.start(0);
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of("/usr/bin/chromium"))
                        .setArgs(List.of(
                                "--headless",
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    @AfterAll
    static void stop() {
        browser.close();
        playwright.close();
        server.close();
    }

    private static BrowserContext context(int width, ColorScheme scheme) {
        return browser.newContext(
                new Browser.NewContextOptions().setViewportSize(width, 900).setColorScheme(scheme));
    }

    @Test
    void aJob_isChosenAndPlanned_withTheKeyboardAlone() {
        try (BrowserContext context = context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(server.address());
            page.getByText("Front disc brake").first().focus();
            page.keyboard().press("Enter");
            page.waitForURL("**/sheet/front-brake");
            page.locator("input[name=side][value=both]").focus();
            page.keyboard().press("ArrowDown");
            page.locator("input[name=renew][value=pads]").focus();
            page.keyboard().press("Space");
            assertThat(page.locator("#picked").textContent()).contains("pads");
            page.locator("button").focus();
            page.keyboard().press("Enter");
            page.waitForURL("**/plan?**");
            assertThat(page.url()).contains("side=left");
            assertThat(page.locator("h1").textContent()).contains("left");
            assertThat(page.locator("#apart").isVisible()).isTrue();
            page.locator("details summary").first().focus();
            page.keyboard().press("Enter");
            assertThat(page.locator("details p").first().isVisible()).isTrue();
        }
    }

    @Test
    void anEmptyForm_isNotSent_butSaysWhatIsMissing() {
        try (BrowserContext context = context(390, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.navigate(server.address() + "/sheet/twist-beam");
            page.locator("button").click();
            assertThat(page.url()).endsWith("/sheet/twist-beam");
            assertThat(page.locator("#picked").textContent()).contains("Tick what is to be renewed");
        }
    }

    @ParameterizedTest
    @CsvSource({"390,LIGHT", "390,DARK", "1280,LIGHT", "1280,DARK"})
    void everyPage_fits_andPassesTheAccessibilityCheck(int width, ColorScheme scheme) {
        try (BrowserContext context = context(width, scheme)) {
            Page page = context.newPage();
            int number = 0;
            for (String path : PAGES) {
                page.navigate(server.address() + path);
                Object wider = page.evaluate("document.documentElement.scrollWidth - window.innerWidth");
                assertThat(((Number) wider).intValue()).as(path).isLessThanOrEqualTo(0);
                assertThat(new AxeBuilder(page).analyze().getViolations())
                        .as(path + " at " + width + " " + scheme)
                        .isEmpty();
                page.screenshot(new Page.ScreenshotOptions()
                        .setFullPage(true)
                        .setPath(Path.of("target", "screenshots", number++ + "-" + width + "-" + scheme + ".png")));
            }
        }
    }

    @Test
    void noRequest_leavesTheMachine() {
        List<String> asked = new ArrayList<>();
        try (BrowserContext context = context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            page.onRequest(request -> asked.add(request.url()));
            PAGES.forEach(path -> page.navigate(server.address() + path));
        }
        assertThat(asked).isNotEmpty().allMatch(url -> url.startsWith(server.address() + "/"));
    }
}
