package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.RequestOptions;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A job from the arrival to the handover, as one sits at the desk. */
abstract class JobCourse {
    private static final List<String> PAPERS =
            List.of("job-card", "labels", "fill-in", "tightening-record", "handover");

    abstract Screens screens();

    private String name() {
        return getClass().getSimpleName().replace("JobPageTest", "").toLowerCase(Locale.ROOT);
    }

    @Test
    void aJob_goesFromTheArrivalToTheHandover() {
        try (BrowserContext context = screens().context(1280, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            takeIn(page, "WH 12");
            String job = page.url();
            picture(page, "arrived");
            page.click("text=Price is ready");
            assertThat(page.textContent(".refusal")).contains("nothing is named that is to be renewed");
            scope(page);
            price(page);
            page.click("button:has-text('Start the work')");
            assertThat(page.textContent(".refusal")).contains("right part by number and look");
            lookAtParts(page);
            page.click("button:has-text('Start the work')");
            assertThat(page.textContent(".course .here")).isEqualTo("under way");
            found(page);
            page.click("button:has-text('Together again')");
            page.click("button:has-text('Hand over')");
            assertThat(page.textContent(".refusal")).contains("the job still owes");
            picture(page, "owes");
            carryAll(context, page, job);
            page.navigate(job);
            page.fill("#arrival input[name='distance-out']", "128412");
            page.click("#arrival button:has-text('Keep')");
            page.click("button:has-text('Hand over')");
            assertThat(page.textContent(".course .here")).isEqualTo("handed over");
            assertThat(page.textContent("#rechecks")).contains("wheel fasteners", "2026-11-09", "128462");
            picture(page, "handed-over");
            papers(context, job);
            page.navigate(screens().address());
            assertThat(page.textContent("main")).doesNotContain("WH 12");
        }
    }

    private void takeIn(Page page, String plate) {
        page.navigate(screens().address() + "car");
        page.fill("input[name=plate]", plate);
        page.fill("input[name=make]", "Tamsel");
        page.fill("input[name=model]", "Dory");
        page.fill("input[name=vin]", "1G4AH59H45G118341");
        page.fill("input[name=owner]", "Orla Quent");
        page.fill("input[name=phone]", "0555 12");
        page.click("button:has-text('Keep')");
        page.fill("textarea[name=complaint]", "bangs over every bump");
        page.fill("textarea[name=conditions]", "cold, slow, rear left");
        page.fill("input[name=distance]", "128400");
        page.fill("input[name=rl]", "352 mm");
        page.click("button:has-text('Open a job')");
        assertThat(page.textContent("h1")).contains("2026-").contains("bangs over every bump");
    }

    private static void scope(Page page) {
        page.click("text=Tick what is to be renewed");
        page.click("nav a:has-text('Tamsel Dory, small van')");
        page.check("input[value=damper]");
        page.check("input[name=side][value=left]");
        page.click("text=This is the job");
        assertThat(page.textContent("#scope")).contains("Rear damper");
    }

    private void price(Page page) {
        page.click("a:has-text('Grade it, fixing by fixing')");
        page.selectOption("select[name=rust]", "2");
        picture(page, "rust");
        page.click("button:has-text('Keep')");
        page.click("summary:has-text('Terms')");
        page.fill("#scope input[name=rate]", "62");
        page.fill("#scope input[name=tax]", "20");
        page.click("#scope button:has-text('Keep')");
        page.click("button:has-text('Price is ready')");
        assertThat(page.textContent(".course .here")).isEqualTo("priced");
        page.click("button:has-text('Agreed')");
        assertThat(page.textContent(".refusal")).contains("nobody has said yes");
        page.navigate(page.url().replace("/move", ""));
        page.fill("#approvals input[name='up-to']", "400");
        page.click("button:has-text('They said yes')");
        assertThat(page.textContent("#approvals")).contains("Yes", "Orla Quent", "up to 400.00");
        page.click("button:has-text('Agreed')");
        page.click("button:has-text('Put down what the plan needs')");
        picture(page, "agreed");
    }

    private static void lookAtParts(Page page) {
        page.navigate(page.url().replace("/move", ""));
        while (page.locator("#parts button:has-text('Is here')").count() > 0) {
            page.locator("#parts button:has-text('Is here')").first().click();
        }
        while (page.locator("#parts button:has-text('Right part, by number and look')")
                        .count()
                > 0) {
            page.locator("#parts button:has-text('Right part, by number and look')")
                    .first()
                    .click();
        }
    }

    private static void found(Page page) {
        page.click("#findings summary");
        page.fill("#findings input[name=where]", "rear left");
        page.fill("#findings details input[name=words]", "brake hose cracked <b>deep</b>");
        page.click("#findings button:has-text('Write it down')");
        assertThat(page.textContent("#findings")).contains("<b>deep</b>");
        page.fill("#findings .joblines input[name=words]", "next year");
        page.click("#findings button:has-text('Owner: no')");
        assertThat(page.textContent("#findings")).contains("the owner said no: “next year”", "written down by");
    }

    /** What is owed is carried with a name and a reason, which is one way to hand a car over. */
    private void carryAll(BrowserContext context, Page page, String job) {
        page.navigate(job);
        carry(context, job, "part", "left.damper");
    }

    private static void carry(BrowserContext context, String job, String what, String id) {
        String event = "{\"id\":\"e-" + id
                + "\",\"at\":\"2026-11-02T12:00:00Z\",\"by\":\"Mara\",\"device\":\"desk\",\"seq\":1,"
                + "\"do\":\"carry\",\"" + what + "\":\"" + id + "\",\"reason\":\"goes on a trailer\"}\n";
        APIResponse response = context.request()
                .post(
                        job + "/events",
                        RequestOptions.create()
                                .setHeader("Content-Type", "application/x-ndjson")
                                .setData(event));
        assertThat(response.status()).as(response.text()).isLessThan(300);
    }

    private static void papers(BrowserContext context, String job) {
        for (String paper : PAPERS) {
            APIResponse pdf = context.request().get(job + "/" + paper + ".pdf");
            assertThat(pdf.status()).as(paper).isEqualTo(200);
            assertThat(new String(pdf.body(), 0, 5, StandardCharsets.ISO_8859_1))
                    .isEqualTo("%PDF-");
        }
    }

    @Test
    void aFormFromBeforeAnothersChange_overwritesNothing() {
        try (BrowserContext context = screens().context(1280, ColorScheme.LIGHT)) {
            Page one = context.newPage();
            takeIn(one, "WH 88");
            Page other = context.newPage();
            other.navigate(one.url());
            one.fill("#arrival textarea[name=complaint]", "bangs, and pulls left");
            one.click("#arrival button:has-text('Keep')");
            other.fill("#arrival textarea[name=complaint]", "squeaks");
            other.click("#arrival button:has-text('Keep')");
            assertThat(other.textContent("main")).contains("nothing was overwritten", "squeaks");
            other.click("text=See it as it is now");
            assertThat(other.inputValue("#arrival textarea[name=complaint]")).isEqualTo("bangs, and pulls left");
        }
    }

    @Test
    void whatIsTyped_isThereAgain_afterTheConnectionWasLost_andIsWrittenDownOnce() {
        try (Cable cable = Cable.to(URI.create(screens().address()).getPort());
                BrowserContext context = screens().context(390, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            takeIn(page, "WH 77");
            String path = page.url().substring(screens().address().length());
            page.navigate(cable.address() + "/" + path);
            page.click("#findings summary");
            page.fill("#findings input[name=words]", "spring broken");
            page.selectOption("#findings select", "stop driving");
            cable.cut();
            page.click("#findings button:has-text('Write it down')");
            page.waitForURL("chrome-error://**");
            cable.mend();
            page.navigate(cable.address() + "/" + path);
            assertThat(page.textContent("#findings .kept")).contains("in its place again");
            assertThat(page.inputValue("#findings input[name=words]")).isEqualTo("spring broken");
            picture(page, "typed-again");
            page.click("#findings button:has-text('Write it down')");
            assertThat(page.textContent("#findings .joblines")).contains("stop driving", "spring broken");
            assertThat(page.locator("#findings .kept").count()).isZero();
            assertThat(page.inputValue("#findings input[name=words]")).isEmpty();
            APIResponse again = context.request()
                    .post(
                            cable.address() + "/" + path + "/finding",
                            RequestOptions.create()
                                    .setForm(FormData.create()
                                            .set("words", "spring broken")
                                            .set("urgency", "soon")
                                            .set("typed-id", cookie(context, "putback-has"))));
            assertThat(again.text()).containsOnlyOnce("spring broken");
        }
    }

    private static String cookie(BrowserContext context, String name) {
        return context.cookies().stream()
                .filter(cookie -> cookie.name.equals(name))
                .findFirst()
                .orElseThrow()
                .value;
    }

    @Test
    void whatAnotherHandChangedMeanwhile_isNotTypedOver() {
        try (BrowserContext context = screens().context(1280, ColorScheme.LIGHT)) {
            Page one = context.newPage();
            takeIn(one, "WH 78");
            one.fill("#arrival textarea[name=complaint]", "bangs, and pulls left");
            String job = one.url();
            one.navigate(screens().address());
            try (BrowserContext elsewhere = screens().context(1280, ColorScheme.LIGHT)) {
                Page other = elsewhere.newPage();
                other.navigate(job);
                other.fill("#arrival textarea[name=complaint]", "squeaks");
                other.click("#arrival button:has-text('Keep')");
                assertThat(other.inputValue("#arrival textarea[name=complaint]"))
                        .isEqualTo("squeaks");
            }
            one.navigate(job);
            assertThat(one.inputValue("#arrival textarea[name=complaint]")).isEqualTo("squeaks");
            assertThat(one.textContent("#arrival .kept")).contains("by somebody meanwhile", "bangs, and pulls left");
            one.click("text=Throw it away");
            one.reload();
            assertThat(one.locator("#arrival .kept").count()).isZero();
        }
    }

    @Test
    void theOwnersLink_showsOneEstimate_andTakesOneAnswer() {
        try (BrowserContext context = screens().context(390, ColorScheme.DARK)) {
            Page page = context.newPage();
            takeIn(page, "WH 99");
            String job = page.url();
            scope(page);
            assertThat(page.textContent("#approvals")).contains("an example is no offer");
            page.click("summary:has-text('Terms')");
            page.fill("#scope input[name=rate]", "62");
            page.click("#scope button:has-text('Keep')");
            page.click("text=Make a link that asks the owner");
            String link = page.textContent("#link");
            assertThat(page.textContent("main")).contains("opens on this machine only");
            assertThat(page.isVisible("button:has-text('Copy it')")).isTrue();
            try (BrowserContext owner = screens().context(390, ColorScheme.LIGHT)) {
                Page seen = owner.newPage();
                seen.navigate(link);
                assertThat(seen.textContent("main"))
                        .contains("Rear damper", "Likely total")
                        .doesNotContain("0555 12");
                picture(seen, "link");
                seen.fill("input[name=who]", "Orla Quent");
                seen.click("button:has-text('Yes, up to')");
                assertThat(seen.textContent("main")).contains("The garage sees your yes now", "Orla Quent said yes");
                assertThat(seen.locator("form").count()).isZero();
                assertThat(seen.navigate(link.substring(0, link.length() - 1) + "A")
                                .status())
                        .isIn(404, 200)
                        .matches(status -> status == 404 || link.endsWith("A"));
            }
            page.navigate(job);
            assertThat(page.textContent("#approvals")).contains("by the link");
            picture(page, "narrow");
        }
    }

    @Test
    void theDayAndTheSearch_showTheJob_inEitherEnglish() {
        try (BrowserContext context = screens().context(1280, ColorScheme.DARK)) {
            Page page = context.newPage();
            takeIn(page, "WH 55");
            page.navigate(screens().address());
            assertThat(page.textContent("main")).contains("Waits for us", "WH 55");
            picture(page, "day");
            page.fill("input[name=q]", "wh55");
            page.press("input[name=q]", "Enter");
            assertThat(page.textContent("main")).contains("Cars", "Jobs");
            assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
        }
    }

    @Test
    void itsPages_haveNothingThatAScreenReaderStumblesOver() {
        try (BrowserContext context = screens().context(390, ColorScheme.LIGHT)) {
            Page page = context.newPage();
            takeIn(page, "WH 66");
            assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
            scope(page);
            assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
            page.navigate(screens().address() + "settings");
            assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
            picture(page, "settings");
        }
    }

    private void picture(Page page, String what) {
        Screens.picture(page, "job-" + name() + "-" + what, true);
    }
}
