package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.store.books.Events;
import putback.store.books.Job;

/** What broke on the way does not go back as it is, and nobody has to remember it. */
@Tag("browser")
class CarsideBrokenPageTest {
    @RegisterExtension
    private static final CarsideBench BENCH = new CarsideBench();

    private static void press(Page page, String label) {
        page.click("button:text-is('" + label + "')");
    }

    /** Written down on another device. */
    private static void breaks(Page page, Job job, String part) {
        page.evaluate(
                "([job, part]) => fetch('/job/' + job + '/events', {method: 'POST', headers: {'Content-Type':"
                        + " 'application/x-ndjson'}, body: JSON.stringify({id: 'broke-1', at: '2026-11-03T09:14:05Z',"
                        + " by: 'Jo', device: 'other', seq: 1, do: 'break', part, reason: 'cracked'})})",
                List.of(job.id(), part));
        page.waitForFunction(
                "async job => (await (await fetch('/job/' + job + '/carside.json')).json()).last > 0", job.id());
    }

    private static String seen(Page page, String address) {
        return (String) page.evaluate("async address => (await fetch(address)).text()", address);
    }

    @Test
    void aPartThatBroke_isNotClosedUpAgain_beforeANewOneIsThere() {
        Job job = BENCH.job("twist-beam", "damper", "left");
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            breaks(page, job, "beam");
            assertThat(seen(page, "/job/" + job.id())).contains("Broke: ", "Jo, 2026-11-03", "cracked");
            assertThat(seen(page, "/"))
                    .contains("id=\"standstills\"", "/job/" + job.id() + "#broke", "Broke: ", "cracked");
            for (int i = 0; i < 60 && page.querySelector(".broke-first") == null; i++) {
                CarsideSteps.doStep(page);
            }
            CarsideBench.picture(page, "broke-390");
            assertThat(page.getAttribute("#main article", "data-do")).isEqualTo("start");
            assertThat(page.textContent("#main article"))
                    .contains("broke: Jo", "cracked", "It does not go back as it is", "Renew it in this job");
            assertThat(page.textContent("#main article .main-go")).isEqualTo("A new one is in my hand");
            String step = page.getAttribute("#main article", "data-n");
            page.click("#main article .main-go");
            page.waitForFunction("() => !document.querySelector('.broke-first')");
            assertThat(page.getAttribute("#main article", "data-n")).isEqualTo(step);
            CarsideSteps.waitUntilSent(page);
            assertThat(seen(page, "/job/" + job.id())).doesNotContain("Broke: ");
            assertThat(seen(page, "/")).doesNotContain("/job/" + job.id() + "#broke");
        }
        assertThat(new Events(BENCH.books()).all(job.id()))
                .filteredOn(event -> event.did() == Did.RENEW)
                .extracting(Event::part)
                .contains("beam");
    }

    @Test
    void aNewBrakePipe_saysWhatItHangsOn_andThatTheBrakesAreBled() {
        Job job = BENCH.job("twist-beam", "damper", "left");
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.DARK)) {
            Page page = BENCH.open(phone, job, "Mara");
            breaks(page, job, "left.pipe");
            press(page, "What is owed");
            page.waitForSelector(".owed li:has-text('Brake pipe')");
            page.click(".owed li:has-text('Brake pipe') button:text-is('Do it now')");
            page.waitForSelector(".wants");
            CarsideBench.picture(page, "new-pipe-390-dark");
            assertThat(page.textContent("#main"))
                    .contains(
                            "Caliper-hose union at the beam’s pipe".replace('’', '\''),
                            "looked at a second time",
                            "bleed the brakes and look for leaks",
                            "by the maker’s procedure",
                            "Renew it in this job");
            press(page, "A new one is in");
            page.waitForFunction("() => !document.querySelector('.owed li')");
        }
    }

    @Test
    void whereNothingMoves_theDayKnowsIt_untilItMoves() {
        Job job = BENCH.job("twist-beam", "damper", "left");
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            for (int i = 0; i < 60 && page.querySelector("article[data-do=undo]") == null; i++) {
                CarsideSteps.doStep(page);
            }
            press(page, "It will not move");
            page.click(".list button >> nth=0");
            page.click(".resorts li >> nth=0 >> button:text-is('Tried')");
            page.waitForSelector("li.tried");
            press(page, "It stands still: somebody has to decide");
            page.waitForSelector("a:text-is('To the price')");
            CarsideSteps.waitUntilSent(page);
            CarsideBench.picture(page, "stands-still-390");
            assertThat(seen(page, "/job/" + job.id())).contains("Stands still: ", "Mara", "tried ");
            assertThat(seen(page, "/")).contains("/job/" + job.id() + "#broke", "Stands still: ");
            press(page, "Back to the step");
            CarsideSteps.doStep(page);
            CarsideSteps.waitUntilSent(page);
            assertThat(seen(page, "/")).doesNotContain("/job/" + job.id() + "#broke");
        }
    }

    @Test
    void whatWasPressedByMistake_isTakenBack() {
        Job job = BENCH.job("twist-beam", "damper", "left");
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            breaks(page, job, "beam");
            for (int i = 0; i < 60 && page.querySelector(".broke-first") == null; i++) {
                CarsideSteps.doStep(page);
            }
            page.click("button:has-text('It did not break')");
            press(page, "It is whole, take it back");
            page.waitForFunction(
                    "() => document.querySelector('#main article') && !document.querySelector('.broke-first')");
            CarsideSteps.waitUntilSent(page);
            assertThat(seen(page, "/job/" + job.id())).doesNotContain("Broke: ");
        }
    }
}
