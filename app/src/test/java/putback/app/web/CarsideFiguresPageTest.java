package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.store.books.CarSheets;
import putback.store.books.Events;
import putback.store.books.Job;

/** A fixing of which nobody has said how tight, what broke, and what must not be heated. */
@Tag("browser")
class CarsideFiguresPageTest {
    private static final String UNKNOWN = """
            sheet: car-x
            title: Van of which little is known
            base: demo-van
            joints:
              damper-lower: {torque: null}
            """;

    @RegisterExtension
    private static final CarsideBench BENCH = new CarsideBench();

    private static Job job() {
        Job job = BENCH.job("car", "damper", "left");
        BENCH.books()
                .write(change -> new CarSheets(BENCH.books()).add(change, job.car(), 0, UNKNOWN, "Ola", "by hand"));
        return job;
    }

    private static void press(Page page, String label) {
        page.click("button:text-is('" + label + "')");
    }

    /** Goes on to a step of a kind, or to the one that has a field. */
    private static void until(Page page, String selector) {
        for (int i = 0; i < 90 && page.querySelector(selector) == null; i++) {
            CarsideSteps.doStep(page);
        }
        page.waitForSelector(selector);
    }

    @Test
    void aFigureThatWasLookedUp_isWrittenDownWithItsSource_andKeptOnTheCarsSheet() {
        Job job = job();
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            until(page, "input[name=looked-up]");
            CarsideBench.picture(page, "looked-up-390");
            String before = page.getAttribute("#main article", "data-n");
            page.fill("input[name=looked-up]", "62");
            press(page, "Tight: 62 N·m (46 lbf·ft)");
            assertThat(page.textContent(".notice")).contains("Say where the figure stands");
            page.fill("input[name=source]", "maker's handbook p. 42");
            press(page, "Tight: 62 N·m (46 lbf·ft)");
            page.waitForFunction("n => document.querySelector('#main article').dataset.n !== n", before);
            CarsideSteps.waitUntilSent(page);
        }
        assertThat(new Events(BENCH.books()).all(job.id()))
                .filteredOn(event -> event.did() == Did.TIGHTEN && "left.damper-lower".equals(event.joint()))
                .extracting(Event::torqueNm, Event::reason)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(62.0, "looked up: maker's handbook p. 42"));
        assertThat(new CarSheets(BENCH.books()).current(job.car()).orElseThrow().text())
                .contains("62 N·m", "maker's handbook p. 42");
    }

    @Test
    void whatIsTightWithoutAFigure_saysSo_onTheRecordAndAtTheEnd() {
        Job job = job();
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            until(page, "input[name=looked-up]");
            assertThat(page.textContent(".main-go")).isEqualTo("Tight, without a figure");
            CarsideSteps.doStep(page);
            CarsideSteps.waitUntilSent(page);
            press(page, "What is owed");
            page.waitForSelector("h2:has-text('Tight without a figure')");
            assertThat(page.textContent("#main")).contains("Damper lower bolt, left");
        }
        assertThat(new Events(BENCH.books()).all(job.id()))
                .extracting(Event::reason)
                .contains("tight without a figure: its torque is not known");
        assertThat(new CarSheets(BENCH.books()).history(job.car())).hasSize(1);
    }

    @Test
    void aSeizedDamperBolt_saysThatGasBursts_whateverElseIsNear() {
        Job job = BENCH.job("twist-beam", "damper", "left");
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.DARK)) {
            Page page = BENCH.open(phone, job, "Mara");
            until(page, "article:has(h1:has-text('Undo damper lower'))");
            press(page, "It will not move");
            page.click(".list button >> nth=0");
            page.waitForSelector(".resorts");
            CarsideBench.picture(page, "gas-390-dark");
            assertThat(page.textContent("#main"))
                    .contains("Gas under pressure: never heat, cut or open the damper")
                    .doesNotContain("times in 100");
        }
    }

    @Test
    void whatBreaksAtAStep_isAHoseOrAWireToo_orSomethingInWords() {
        Job job = BENCH.job("front-strut", "complete-strut", "left");
        Events events = new Events(BENCH.books());
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            press(page, "It broke");
            List<String> things = page.locator(".list button").allTextContents();
            assertThat(things).anyMatch(thing -> thing.contains("hose")).anyMatch(thing -> thing.contains("sensor"));
            press(page, "Something else");
            assertThat(page.textContent(".notice")).contains("Write above what it is");
            page.fill("input[name=words]", "jacking point folded");
            press(page, "Something else");
            page.waitForSelector("#main article");
            CarsideSteps.waitUntilSent(page);
        }
        assertThat(events.all(job.id()))
                .extracting(Event::reason)
                .containsExactly("Found, stop driving: broke: jacking point folded");
    }

    @ParameterizedTest
    @CsvSource({"390, 844, LIGHT", "1024, 768, DARK"})
    void tight_canBePressedWithoutScrolling(int width, int height, ColorScheme scheme) {
        Job job = BENCH.job("front-strut", "complete-strut", "left");
        try (BrowserContext device = BENCH.device(width, height, scheme)) {
            Page page = BENCH.open(device, job, "Mara");
            until(page, "article[data-do=tighten]");
            assertThat(page.evaluate("() => { const box = document.querySelector('.main-go').getBoundingClientRect();"
                            + " return box.bottom <= innerHeight && box.top >= 0; }"))
                    .isEqualTo(true);
        }
    }
}
