package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import putback.store.books.Job;

/** What the page at the car says in its first seconds. */
@Tag("browser")
class CarsideFirstSightPageTest {
    private static final String OVERHEAR = """
            window.heard = [];
            addEventListener('DOMContentLoaded', () => new MutationObserver(() => {
              heard.push(document.getElementById('net').textContent);
            }).observe(document.getElementById('net'), {childList: true, characterData: true, subtree: true}));
            """;

    @RegisterExtension
    private static final CarsideBench BENCH = new CarsideBench();

    @Test
    void beforeTheGarageWasAsked_nothingIsSaidOfNoNetwork() {
        Job job = BENCH.job("demo-van", "damper", "left");
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            phone.addInitScript(OVERHEAR);
            Page page = BENCH.open(phone, job, "Mara");
            CarsideSteps.doStep(page);
            CarsideSteps.waitUntilSent(page);
            page.waitForFunction("() => document.documentElement.dataset.kept === 'yes'");
            page.waitForResponse("**/carside.json", page::reload);
            page.waitForSelector("#main article");
            CarsideSteps.doStep(page);
            CarsideSteps.waitUntilSent(page);
            assertThat((List<?>) page.evaluate("() => heard"))
                    .noneMatch(said -> said.toString().contains("No network"));
        }
    }

    @Test
    void whoeverTakesOver_onANewDevice_seesTheHandoverCardAfterHisName() {
        Job job = BENCH.job("twist-beam", "damper", "left");
        try (BrowserContext first = BENCH.device(390, 844, ColorScheme.LIGHT);
                BrowserContext second = BENCH.device(390, 844, ColorScheme.DARK)) {
            Page page = BENCH.open(first, job, "Mara");
            page.click("button:text-is('Found something')");
            page.fill("textarea", "brake hose cracked");
            page.check("input[value='stop driving']");
            page.click("button:text-is('Write it down')");
            page.click("button:text-is('It broke')");
            page.click(".list button:has-text('beam') >> nth=0");
            page.click("button:text-is('Interrupted')");
            page.click("button:text-is('Show the handover card')");
            CarsideSteps.waitUntilSent(page);
            Page other = second.newPage();
            other.navigate(BENCH.address() + "/job/" + job.id() + "/carside");
            other.fill("input[name=who]", "Teo");
            other.click("button:text-is('This is me')");
            other.waitForSelector(".handover");
            CarsideBench.picture(other, "takes-over-390-dark");
            assertThat(other.textContent(".handover")).contains("Broke", "beam", "Stop driving", "brake hose cracked");
        }
    }
}
