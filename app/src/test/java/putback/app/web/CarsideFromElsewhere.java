package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.ledger.chain.Verdict;
import putback.store.books.Events;
import putback.store.books.Job;

/**
 * The page at the car from another address of the network, over HTTPS with the certificate checked, while the network is
 * lost in silence and then for good. Not among the tests by itself: {@code ./check --elsewhere} makes the second address
 * (a network namespace called putback with the addresses below) and takes it away again, for which it has to be root.
 */
class CarsideFromElsewhere {
    private static final String HERE = "10.77.0.1";
    private static final String THERE = "10.77.0.2";
    private static final String CABLE = "putback0";

    @TempDir
    private Path folder;

    private static void run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(process.waitFor())
                .as(String.join(" ", command) + ": " + said)
                .isZero();
    }

    /** A browser of the other address; it trusts the garage's own authority only when it was told to. */
    private Browser browser(Playwright playwright, String home, byte[] authority) throws Exception {
        Path house = Files.createDirectories(folder.resolve(home));
        Path store = Files.createDirectories(house.resolve(".pki/nssdb"));
        run("certutil", "-d", "sql:" + store, "-N", "--empty-password");
        if (authority.length > 0) {
            Path file = house.resolve("authority.pem");
            Files.writeString(
                    file,
                    "-----BEGIN CERTIFICATE-----\n" + Base64.getMimeEncoder().encodeToString(authority)
                            + "\n-----END CERTIFICATE-----\n");
            run("certutil", "-d", "sql:" + store, "-A", "-t", "C,,", "-n", "garage", "-i", file.toString());
        }
        Path starter = house.resolve("browser");
        Files.writeString(starter, "#!/bin/sh\nexec ip netns exec putback /usr/bin/chromium \"$@\"\n");
        assertThat(starter.toFile().setExecutable(true)).isTrue();
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(starter)
                        .setEnv(Map.of("HOME", house.toString()))
                        .setArgs(List.of("--headless", "--no-sandbox", "--disable-gpu", "--no-first-run")));
    }

    private static void steps(Page page, int count) {
        for (int i = 0; i < count; i++) {
            CarsideSteps.doStep(page);
        }
    }

    private static void waitForUnsent(Page page, int count) {
        page.waitForFunction("n => document.getElementById('net').dataset.unsent === n", String.valueOf(count));
    }

    @Test
    void aJob_goesOnOverHttps_whileTheNetworkIsSilent_andWhileItIsGone() throws Exception {
        try (Lan lan = new Lan(List.of("localhost", "127.0.0.1", HERE));
                Playwright playwright = Playwright.create(
                        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")))) {
            String garage =
                    "https://" + HERE + ":" + URI.create(lan.server.address()).getPort();
            Job job = CarsideBench.job(lan.books, "demo-van", "damper", "both");
            try (Browser stranger = browser(playwright, "stranger", new byte[0]);
                    Page page = stranger.newPage()) {
                assertThat(refusal(page, garage)).contains("ERR_CERT_AUTHORITY_INVALID");
            }
            byte[] authority = lan.identity.authority().getEncoded();
            try (Browser browser = browser(playwright, "trusting", authority);
                    BrowserContext tablet = browser.newContext()) {
                Page page = tablet.newPage();
                page.navigate(garage + "/sign-in");
                page.fill("input[name=name]", Lan.MECHANIC);
                page.fill("input[name=password]", Lan.PASSWORD);
                page.click("main button[type=submit]");
                page.navigate(garage + "/job/" + job.id() + "/carside");
                page.waitForSelector("#main article");
                page.waitForFunction("() => document.documentElement.dataset.kept === 'yes'");
                work(page, new Events(lan.books), job);
            }
            assertThat(new Events(lan.books).verifyChain(job.id())).isInstanceOf(Verdict.Whole.class);
            assertThat(new Events(lan.books).all(job.id()))
                    .allMatch(event -> event.by().equals(Lan.MECHANIC));
        }
    }

    private static String refusal(Page page, String garage) {
        try {
            page.navigate(garage + "/sign-in");
            return "";
        } catch (com.microsoft.playwright.PlaywrightException refused) {
            return String.valueOf(refused.getMessage());
        }
    }

    private static void work(Page page, Events events, Job job) throws Exception {
        steps(page, 4);
        waitForUnsent(page, 0);
        run("ip", "route", "add", "blackhole", THERE + "/32");
        try {
            steps(page, 3);
            waitForUnsent(page, 3);
            page.reload();
            page.waitForSelector("#main article");
            steps(page, 2);
            assertThat(events.all(job.id())).hasSizeLessThanOrEqualTo(7);
        } finally {
            run("ip", "route", "del", "blackhole", THERE + "/32");
        }
        waitForUnsent(page, 0);
        assertThat(events.all(job.id())).hasSize(9);
        run("ip", "link", "set", CABLE, "down");
        try {
            steps(page, 5);
            page.reload();
            page.waitForSelector("#main article");
            waitForUnsent(page, 5);
            assertThat(events.all(job.id())).hasSize(9);
        } finally {
            run("ip", "link", "set", CABLE, "up");
        }
        waitForUnsent(page, 0);
        assertThat(events.all(job.id())).hasSize(14);
    }
}
