package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import putback.job.Stage;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.store.books.Events;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.books.Scope;

/** A bolt that would not move on one car changes what is said of the next. */
@Tag("browser")
class LearntPageTest {
    @RegisterExtension
    private static final CarsideBench BENCH = new CarsideBench();

    private static Job rusty() {
        Job job = BENCH.job("demo-van", "damper", "left");
        Scope scope = new Scope("demo-van", "damper", "left", "", "3");
        return kept(BENCH.books().write(change -> new Jobs(BENCH.books()).save(change, job.with(scope))));
    }

    private static Job kept(Saved<Job> saved) {
        return ((Saved.Done<Job>) saved).value();
    }

    private static void press(Page page, String label) {
        page.click("button:text-is('" + label + "')");
    }

    @Test
    void aSeizedBolt_isWrittenDownAtTheCar_andCountsInTheNextJobsPriceAndResorts() {
        Job next = rusty();
        Job first = rusty();
        BENCH.books().write(change -> new Jobs(BENCH.books()).move(change, first, Stage.UNDER_WAY, "Mara", ""));
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, first, "Mara");
            page.navigate(BENCH.address() + "/job/" + next.id());
            assertThat(page.textContent("#scope")).contains("no finished job on a car like this");
            page.navigate(BENCH.address() + "/job/" + first.id() + "/carside");
            page.waitForSelector("#main article");
            work(page);
            page.navigate(BENCH.address() + "/job/" + first.id());
            press(page, "Together again");
            page.navigate(BENCH.address() + "/job/" + next.id());
            page.click("summary:has-text('Learnt from your own jobs')");
            assertThat(page.textContent("#scope"))
                    .contains("Damper lower bolt, left, seized: your own 1 of these", ", works: your own 1 of these");
            CarsideBench.picture(page, "learnt-390");
            resortsOf(next, page);
        }
        List<String> notes = new ArrayList<>();
        for (Event event : new Events(BENCH.books()).all(first.id())) {
            if (event.did() == Did.NOTE) {
                notes.add(String.valueOf(event.reason()));
            }
        }
        assertThat(String.join("; ", notes))
                .matches(
                        "Interrupted: called away; Went on; Will not move \\(stuck\\);"
                                + " Will not move \\(stuck\\): tried [a-z-]+, no; Will not move \\(stuck\\): tried [a-z-]+, yes");
    }

    /** Apart as far as the bolt that would not move. */
    private static void work(Page page) {
        press(page, "Interrupted");
        press(page, "Show the handover card");
        press(page, "Go on");
        until(page);
        page.click(".list button >> nth=0");
        page.click(".resorts li >> nth=0 >> button:text-is('Tried')");
        page.waitForSelector("li.tried");
        page.click(".resorts li:not(.tried) button:text-is('It moved') >> nth=0");
        page.waitForSelector("#main article");
        CarsideSteps.doStep(page);
        CarsideSteps.waitUntilSent(page);
    }

    private static void until(Page page) {
        for (int i = 0; i < 90 && page.querySelector("article:has(h1:has-text('Undo damper lower'))") == null; i++) {
            CarsideSteps.doStep(page);
        }
        press(page, "It will not move");
    }

    private static void resortsOf(Job next, Page page) {
        page.navigate(BENCH.address() + "/job/" + next.id() + "/carside");
        page.waitForSelector("#main article");
        until(page);
        page.click(".list button >> nth=0");
        page.waitForSelector(".resorts");
        CarsideBench.picture(page, "learnt-resorts-390");
        assertThat(page.textContent(".resorts")).contains("(your own 1 of these)", "(assumption)");
    }
}
