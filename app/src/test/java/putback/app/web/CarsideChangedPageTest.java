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
import putback.store.books.Audit;
import putback.store.books.Events;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.books.Scope;

/** The office changes what a job renews while the car hangs on its stands. */
@Tag("browser")
class CarsideChangedPageTest {
    @RegisterExtension
    private static final CarsideBench BENCH = new CarsideBench();

    private static void scope(Job job, String side) {
        BENCH.books().write(change -> {
            Job now = new Jobs(BENCH.books()).find(job.id()).orElseThrow();
            Saved<Job> saved =
                    new Jobs(BENCH.books()).save(change, now.with(new Scope("demo-van", "damper", side, "", "")));
            new Audit(BENCH.books()).add(change, "Ola", job.id(), "scope", "demo-van: damper (" + side + ")");
            return saved;
        });
    }

    private static void press(Page page, String label) {
        page.click("button:text-is('" + label + "')");
    }

    @Test
    void aPlanThatTheOfficeChanged_isSaid_theCarStandsAsItStood_andWhatFellOutOfItCanBeClosed() {
        Job job = BENCH.job("demo-van", "damper", "left");
        Events events = new Events(BENCH.books());
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            while (!page.getAttribute("#main article", "data-do").equals("undo")) {
                CarsideSteps.doStep(page);
            }
            CarsideSteps.doStep(page);
            CarsideSteps.waitUntilSent(page);
            scope(job, "both");
            page.waitForSelector("h1:has-text('The plan was changed')");
            assertThat(page.textContent("#main"))
                    .contains("By Ola at", "The car stands as it stood: raised", "What is written down stays");
            CarsideBench.picture(page, "plan-changed-390");
            press(page, "I have seen it");
            page.waitForSelector("article[data-do='check']");
            CarsideSteps.doStep(page);
            page.waitForSelector("article[data-do='break-loose']");
            assertThat(page.textContent(".place")).contains("car raised");
            assertThat(page.textContent(".beware"))
                    .contains("stands raised. This step is meant for a car on its wheels", "must not be lowered");
            CarsideBench.picture(page, "stands-otherwise-390");
            CarsideSteps.doStep(page);
            CarsideSteps.waitUntilSent(page);
            scope(job, "left");
            page.waitForSelector("h1:has-text('The plan was changed')");
            assertThat(page.textContent("#main")).contains("not in the plan any more: Wheel nuts, right");
            press(page, "I have seen it");
            press(page, "What is owed");
            page.waitForSelector(".owed li:has-text('Wheel nuts, right')");
            page.click(".owed li:has-text('Wheel nuts, right') button:text-is('Do it now')");
            assertThat(page.textContent(".figure")).contains("N·m", "on its wheels");
            page.fill("input[name=torque]", "1");
            press(page, "Tight");
            assertThat(page.textContent(".notice")).contains("is outside");
            CarsideBench.picture(page, "beyond-the-plan-390");
            page.fill("input[name=torque]", "110");
            press(page, "Tight");
            page.waitForSelector(".owed li:has-text('Wheel nuts, right'):has-text('second')");
        }
        List<Event> all = events.all(job.id());
        assertThat(all)
                .filteredOn(event -> event.did() == Did.TIGHTEN)
                .extracting(Event::joint, Event::torqueNm)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("right.wheel-nuts", 110.0));
    }

    @Test
    void aPartThatIsOwedBySingleUse_isRenewedFirst_notLookedAt() {
        Job job = BENCH.job("front-strut", "complete-strut", "left");
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            for (int i = 0; i < 90 && page.querySelector("button:text-is('The old one went back')") == null; i++) {
                CarsideSteps.doStep(page);
            }
            for (var box : page.querySelectorAll("#main article input[type=checkbox]")) {
                box.check();
            }
            String before = page.getAttribute("#main article", "data-n");
            press(page, "The old one went back");
            page.waitForFunction("n => document.querySelector('#main article').dataset.n !== n", before);
            CarsideSteps.waitUntilSent(page);
            press(page, "What is owed");
            page.click(".owed li:has-text('single-use') >> nth=0 >> button:text-is('Do it now')");
            assertThat(page.textContent("#main")).contains("Take the old one out and put a new one in");
            press(page, "A new one is in");
            page.waitForSelector(".owed:not(:has-text('single-use'))");
            page.waitForCondition(() -> new Events(BENCH.books())
                    .all(job.id()).stream().anyMatch(event -> event.did() == Did.REPLACE_FASTENER));
        }
    }
}
