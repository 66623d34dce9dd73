package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import putback.ledger.Event;
import putback.ledger.Owing;
import putback.ledger.PlanPromise;
import putback.ledger.chain.Verdict;
import putback.plan.Plan;
import putback.store.books.Events;
import putback.store.books.Findings;
import putback.store.books.HeardDevices;
import putback.store.books.Job;

/** A whole job at the car, with the network cut in the middle. */
@Tag("browser")
class CarsidePageTest {
    @RegisterExtension
    private static final CarsideBench BENCH = new CarsideBench();

    private static Plan plan(String sheet, String renew, String side) {
        Question question = Question.of(sheet, List.of(renew), side);
        return ((Answer.Planned) Answer.to(question, new Shelf(Garage.UNKNOWN))).plan();
    }

    /** Ticks what stops, then presses the large button; a second look is made by somebody else. */
    private static void doStep(Page page) {
        String before = page.getAttribute("#main article", "data-n");
        for (var box : page.querySelectorAll("#main article input[type=checkbox]")) {
            box.check();
        }
        String label = page.textContent("#main article .main-go");
        page.click("#main article .main-go");
        if (label.startsWith("Another person")) {
            page.fill("input[name=who]", "Teo");
            page.click("section .main-go");
        }
        page.waitForFunction(
                "n => document.querySelector('#main article')?.dataset.n !== n && !document.querySelector('input[name=who]')",
                before);
    }

    private static boolean isAtTheEnd(Page page) {
        return page.querySelector("#main article") == null;
    }

    private static void waitUntilSent(Page page) {
        page.waitForFunction("() => document.getElementById('net').dataset.unsent === '0'");
    }

    @Test
    void aWholeJob_isThereOnce_thoughTheNetworkIsGoneInTheMiddle() {
        Job job = BENCH.job("demo-van", "damper", "both");
        Events events = new Events(BENCH.books());
        try (BrowserContext tablet = BENCH.device(1024, 768, ColorScheme.LIGHT);
                BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(tablet, job, "Mara");
            page.waitForFunction("() => document.documentElement.dataset.kept === 'yes'");
            Page other = BENCH.open(phone, job, "Jo");
            for (int i = 0; i < 12; i++) {
                doStep(page);
            }
            waitUntilSent(page);
            tablet.setOffline(true);
            for (int i = 0; i < 10; i++) {
                doStep(page);
            }
            assertThat(page.textContent("#net")).contains("No network").contains("10 steps kept on this device");
            String card = page.getAttribute("#main article", "data-n");
            page.reload();
            page.waitForSelector("#main article");
            assertThat(page.getAttribute("#main article", "data-n")).isEqualTo(card);
            for (int i = 0; i < 5; i++) {
                doStep(page);
            }
            assertThat(events.all(job.id())).hasSize(12);
            tablet.setOffline(false);
            waitUntilSent(page);
            assertThat(events.all(job.id())).hasSize(27);
            other.waitForFunction(
                    "n => document.querySelector('#main article').dataset.n === n",
                    page.getAttribute("#main article", "data-n"));
            for (int i = 0; i < 80 && !isAtTheEnd(page); i++) {
                doStep(page);
            }
            page.waitForFunction("() => document.querySelector('#main h1').textContent.startsWith('Settled')");
            CarsideBench.picture(page, "settled-1024");
        }
        List<Event> all = events.all(job.id());
        Set<String> ids = new HashSet<>();
        all.forEach(event -> ids.add(event.id()));
        assertThat(ids).hasSameSizeAs(all);
        assertThat(events.verifyChain(job.id())).isInstanceOf(Verdict.Whole.class);
        Plan plan = plan("demo-van", "damper", "both");
        assertThat(Owing.of(PlanPromise.of(plan), all).owes()).isEmpty();
        assertThat(new HeardDevices(BENCH.books()).of(job.id())).hasSize(2).allMatch(one -> one.unsent() == 0);
    }

    @Test
    void asecondPage_seesATick_withinASecond() {
        Job job = BENCH.job("demo-van", "damper", "left");
        try (BrowserContext one = BENCH.device(390, 844, ColorScheme.LIGHT);
                BrowserContext two = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(one, job, "Mara");
            Page other = BENCH.open(two, job, "Teo");
            doStep(page);
            waitUntilSent(page);
            for (int i = 0; i < 3; i++) {
                String next = String.valueOf(Integer.parseInt(page.getAttribute("#main article", "data-n")) + 1);
                long start = System.nanoTime();
                doStep(page);
                other.waitForFunction("n => document.querySelector('#main article').dataset.n === n", next);
                assertThat((System.nanoTime() - start) / 1_000_000).isLessThan(1000);
            }
        }
    }

    @Test
    void whatIsFoundSkippedAndBroken_isWrittenDown_andTakenBack() {
        Job job = BENCH.job("demo-van", "damper", "left");
        Events events = new Events(BENCH.books());
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.DARK)) {
            Page page = BENCH.open(phone, job, "Mara");
            press(page, "Found something");
            page.fill("textarea", "brake hose cracked");
            page.check("input[value='stop driving']");
            press(page, "Write it down");
            page.waitForSelector("#main article");
            press(page, "Skip");
            page.fill("textarea", "key is in the glovebox");
            press(page, "Skip it");
            page.waitForSelector("article[data-n='2']");
            press(page, "It broke");
            page.click(".list button >> nth=0");
            page.waitForSelector("article[data-n='2']");
            doStep(page);
            press(page, "Back");
            page.waitForSelector(".was-done");
            press(page, "That was wrong, take it back");
            press(page, "Take it back");
            page.waitForSelector("article[data-n='2'] .main-go");
            waitUntilSent(page);
        }
        assertThat(new Findings(BENCH.books()).of(job.id()))
                .extracting(found -> found.urgency() + ": " + found.words() + ", " + found.by())
                .containsExactly("stop driving: brake hose cracked, Mara");
        assertThat(events.all(job.id()))
                .extracting(event -> event.did().word())
                .containsExactly("note", "note", "break", "break-loose", "correct");
    }

    private static void press(Page page, String label) {
        page.click("button:text-is('" + label + "')");
    }
}
