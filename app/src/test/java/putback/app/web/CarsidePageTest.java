package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Garage;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Owing;
import putback.ledger.PlanPromise;
import putback.ledger.PlanStep;
import putback.ledger.Signature;
import putback.ledger.chain.Verdict;
import putback.plan.Plan;
import putback.sheet.Height;
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

    private static void waitForNet(Page page, String words) {
        page.waitForFunction("words => document.getElementById('net').textContent.includes(words)", words);
    }

    @Test
    void aWholeJob_isThereOnce_thoughTheNetworkIsGoneInTheMiddle() {
        Job job = BENCH.job("demo-van", "damper", "both");
        Events events = new Events(BENCH.books());
        try (Cable cable = BENCH.cable();
                BrowserContext tablet = BENCH.device(1024, 768, ColorScheme.LIGHT);
                BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(tablet, cable.address(), job, "Mara");
            page.waitForFunction("() => document.documentElement.dataset.kept === 'yes'");
            Page other = BENCH.open(phone, job, "Jo");
            for (int i = 0; i < 12; i++) {
                CarsideSteps.doStep(page);
            }
            CarsideSteps.waitUntilSent(page);
            cable.cut();
            for (int i = 0; i < 10; i++) {
                CarsideSteps.doStep(page);
            }
            waitForNet(page, "No network. 10 steps kept on this device");
            String card = page.getAttribute("#main article", "data-n");
            page.reload();
            page.waitForSelector("#main article");
            assertThat(page.getAttribute("#main article", "data-n")).isEqualTo(card);
            for (int i = 0; i < 5; i++) {
                CarsideSteps.doStep(page);
            }
            assertThat(events.all(job.id())).hasSize(12);
            cable.mend();
            CarsideSteps.waitUntilSent(page);
            assertThat(events.all(job.id())).hasSize(27);
            other.waitForFunction(
                    "n => document.querySelector('#main article').dataset.n === n",
                    page.getAttribute("#main article", "data-n"));
            for (int i = 0; i < 80 && !CarsideSteps.isAtTheEnd(page); i++) {
                CarsideSteps.doStep(page);
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
    void aSecondPage_seesATick_withoutBeingAsked() {
        Job job = BENCH.job("demo-van", "damper", "left");
        try (BrowserContext one = BENCH.device(390, 844, ColorScheme.LIGHT);
                BrowserContext two = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(one, job, "Mara");
            Page other = BENCH.open(two, job, "Teo");
            for (int i = 0; i < 3; i++) {
                CarsideSteps.doStep(page);
                other.waitForFunction(
                        "n => document.querySelector('#main article').dataset.n === n",
                        page.getAttribute("#main article", "data-n"));
            }
        }
        assertThat(new Events(BENCH.books()).all(job.id())).hasSize(3);
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
            CarsideSteps.doStep(page);
            press(page, "Back");
            page.waitForSelector(".was-done");
            press(page, "That was wrong, take it back");
            press(page, "Take it back");
            page.waitForSelector("article[data-n='2'] .main-go");
            CarsideSteps.waitUntilSent(page);
        }
        assertThat(new Findings(BENCH.books()).of(job.id()))
                .extracting(found -> found.urgency() + ": " + found.words() + ", " + found.by())
                .containsExactly("stop driving: brake hose cracked, Mara");
        assertThat(events.all(job.id()))
                .extracting(event -> event.did().word())
                .containsExactly("note", "note", "break", "check", "correct");
    }

    @Test
    void aFullDevice_saysThatTheTickWasNotKept() {
        Job job = BENCH.job("demo-van", "damper", "left");
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            CarsideSteps.doStep(page);
            CarsideSteps.waitUntilSent(page);
            page.evaluate(FULL);
            String card = page.getAttribute("#main article", "data-n");
            page.click("#main article .main-go");
            waitForNet(page, "NOT kept");
            assertThat(page.textContent("#net")).contains("This device is full");
            assertThat(page.getAttribute("#main article", "data-n")).isEqualTo(card);
            CarsideBench.picture(page, "full-390-light");
        }
        assertThat(new Events(BENCH.books()).all(job.id())).hasSize(1);
    }

    /** From now on every transaction that adds something ends as the browser ends one for which there is no room. */
    private static final String FULL = """
            () => {
              const add = IDBObjectStore.prototype.add;
              IDBObjectStore.prototype.add = function (value) {
                const request = add.call(this, value);
                Object.defineProperty(this.transaction, 'error', { value: new DOMException('full', 'QuotaExceededError') });
                this.transaction.abort();
                return request;
              };
            }
            """;

    @Test
    void aClockThatIsWrong_isSaid_andStepsKeepTheirOrder() {
        Job job = BENCH.job("demo-van", "damper", "left");
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            phone.addInitScript("const now = Date.now; Date.now = () => now() + 7 * 60000;");
            Page page = BENCH.open(phone, job, "Mara");
            page.waitForFunction("() => document.getElementById('net').textContent.includes('7 minutes ahead')");
            CarsideSteps.doStep(page);
            CarsideSteps.waitUntilSent(page);
        }
    }

    @Test
    void aReadingOutside_isAskedAbout_andThenOwed_andWhatStaysOpenHasAName() {
        Job job = BENCH.job("demo-van", "damper", "left");
        Plan plan = plan("demo-van", "damper", "left");
        int tighten = doneUntilTheFirstTorque(job, plan);
        Events events = new Events(BENCH.books());
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            page.waitForSelector("article[data-n='" + tighten + "']");
            page.fill("input[name=torque]", "2O0");
            page.click(".main-go");
            assertThat(page.textContent(".notice")).contains("no torque");
            page.fill("input[name=torque]", "200");
            page.click(".main-go");
            assertThat(page.textContent(".notice")).contains("is outside");
            CarsideBench.picture(page, "outside-390-light");
            page.click(".main-go");
            page.waitForFunction(
                    "n => document.querySelector('#main article').dataset.n !== n", String.valueOf(tighten));
            CarsideSteps.waitUntilSent(page);
            press(page, "What is owed");
            page.waitForSelector(".owed li:has-text('200')");
            page.click(".owed li:has-text('200') button:text-is('Stays open')");
            page.fill("textarea", "wrench goes to be looked at");
            press(page, "It stays open");
            page.waitForCondition(() -> events.all(job.id()).stream().anyMatch(event -> event.did() == Did.CARRY));
        }
        List<Event> all = events.all(job.id());
        assertThat(all).extracting(Event::torqueNm).contains(200.0);
        assertThat(Owing.of(PlanPromise.of(plan), all).carried())
                .extracting(Owing.Carried::by, Owing.Carried::reason)
                .contains(org.assertj.core.groups.Tuple.tuple("Mara", "wrench goes to be looked at"));
    }

    /** Writes down, as another device would, all steps before the first that has a torque; its number. */
    private static int doneUntilTheFirstTorque(Job job, Plan plan) {
        List<Event> done = new ArrayList<>();
        for (PlanStep step : PlanPromise.of(plan).steps()) {
            if (step.tight() != null && step.tight().torqueNm() != null) {
                new Events(BENCH.books()).append(job.id(), done);
                return step.number();
            }
            long seq = done.size() + 1L;
            Height height = step.did() == Did.HEIGHT ? step.height() : null;
            done.add(new Event(
                    new Signature("bench-" + seq, Instant.parse("2026-03-02T09:00:00Z"), "Teo", "bench", seq),
                    step.did(),
                    step.joint(),
                    step.part(),
                    step.with(),
                    step.aid(),
                    step.followUp(),
                    height,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null));
        }
        throw new AssertionError("the plan has no torque");
    }

    @Test
    void whatCameApartUnticked_isWrittenDownInOneGo() {
        Job job = BENCH.job("demo-van", "damper", "left");
        Events events = new Events(BENCH.books());
        try (BrowserContext phone = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(phone, job, "Mara");
            press(page, "Out of order");
            page.click(".list button:text-is('Damper lower bolt, left')");
            press(page, "Write them down");
            assertThat(page.textContent(".notice")).contains("Tick it first");
            page.check(".stop input");
            press(page, "Write them down");
            page.waitForSelector("#main article");
            CarsideSteps.waitUntilSent(page);
        }
        assertThat(events.all(job.id())).hasSizeGreaterThan(5);
        assertThat(events.all(job.id())).anyMatch(event -> "left.damper-lower".equals(event.joint()));
        assertThat(events.verifyChain(job.id())).isInstanceOf(Verdict.Whole.class);
    }

    /** Each kind of card, in both lights and on both devices: nothing for axe to say, and everything that a glove must hit is large. */
    @ParameterizedTest
    @CsvSource({"390, 844, LIGHT", "390, 844, DARK", "1024, 768, LIGHT", "1024, 768, DARK"})
    void everyKindOfCard_isReadableAndLarge(int width, int height, ColorScheme scheme) {
        Job job = BENCH.job("demo-van", "damper,spring", "both");
        String name = width + "-" + scheme.name().toLowerCase(Locale.ROOT);
        try (BrowserContext device = BENCH.device(width, height, scheme)) {
            Page page = BENCH.open(device, job, "Mara");
            Set<String> seen = new HashSet<>();
            for (int i = 0; i < 120 && !CarsideSteps.isAtTheEnd(page); i++) {
                String kind = page.getAttribute("#main article", "data-do");
                boolean stop = page.querySelector(".stop") != null;
                if (seen.add(kind + (stop ? "-stop" : ""))) {
                    look(page, kind + (stop ? "-stop" : "") + "-" + name);
                }
                if (i == 8) {
                    panels(page, name);
                }
                CarsideSteps.doStep(page);
            }
            page.waitForFunction("() => document.querySelector('#main h1').textContent.startsWith('Settled')");
            look(page, "settled-" + name);
            assertThat(seen).contains("tighten", "second-look", "height-stop", "undo", "start", "support-stop");
        }
    }

    private static void panels(Page page, String name) {
        for (String label : List.of("Skip", "Out of order", "Found something", "It broke", "Note", "What is owed")) {
            press(page, label);
            look(page, label.toLowerCase(Locale.ROOT).replace(' ', '-') + "-" + name);
            if (label.equals("What is owed")) {
                page.click("button:has-text('Stays open') >> nth=0");
                look(page, "stays-open-" + name);
                page.reload();
                page.waitForSelector("article");
            } else {
                press(page, "Back to the step");
            }
        }
        press(page, "Interrupted");
        press(page, "Show the handover card");
        page.waitForSelector(".handover");
        look(page, "handover-" + name);
        press(page, "Go on");
        for (int i = 0; i < 9 && page.querySelector("button:text-is('It will not move')") == null; i++) {
            CarsideSteps.doStep(page);
        }
        press(page, "It will not move");
        look(page, "which-way-" + name);
        page.click(".list button >> nth=0");
        page.click(".resorts button >> nth=0");
        look(page, "resorts-" + name);
        press(page, "It moved");
    }

    private static void look(Page page, String name) {
        CarsideBench.picture(page, name);
        List<String> faults = new ArrayList<>();
        for (Rule rule : new AxeBuilder(page).analyze().getViolations()) {
            faults.add(name + ": " + rule.getId() + " " + rule.getHelp() + " "
                    + rule.getNodes().get(0).getHtml());
        }
        assertThat(faults).isEmpty();
        assertThat(page.evaluate(SMALL)).as(name).isEqualTo(List.of());
        assertThat(page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
                .as(name)
                .isEqualTo(true);
    }

    /** What is smaller than 64 px in either direction, step text below 28 px, or step text below 7 to 1. */
    private static final String SMALL = """
            (() => {
              const small = [];
              for (const one of document.querySelectorAll('button, .big-tick, a, .big-field input, .big-field textarea')) {
                const box = one.getBoundingClientRect();
                if (box.width < 64 || box.height < 64) small.push(one.textContent + ' ' + box.width + ' x ' + box.height);
              }
              const light = (colour) => {
                const parts = colour.match(/[0-9.]+/g).slice(0, 3).map((c) => c / 255)
                  .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
                return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
              };
              for (const text of document.querySelectorAll('h1.do, .careful, .tools, .place, .figure')) {
                const style = getComputedStyle(text);
                const [dark, bright] = [light(style.color), light(getComputedStyle(document.body).backgroundColor)].sort((a, b) => a - b);
                if ((bright + 0.05) / (dark + 0.05) < 7) small.push(text.textContent + ' is faint');
                if (text.matches('h1.do') && parseFloat(style.fontSize) < 28) small.push(text.textContent + ' is small');
              }
              return small;
            })()
            """;

    private static void press(Page page, String label) {
        page.click("button:text-is('" + label + "')");
    }
}
