package putback.app.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import putback.app.web.frame.Garage;
import putback.store.books.Books;
import putback.store.books.Settings;
import putback.store.database.Database;
import putback.store.sheets.ToolboxRead;
import putback.store.sheets.ToolboxReader;

/** A real browser before the real server, which serves the garage of the demonstration. */
final class Screens implements BeforeAllCallback, AfterAllCallback {
    private static final Path PICTURES = Path.of("target", "screenshots");

    private final @Nullable Supplier<Database> database;
    private @Nullable Server server;
    private @Nullable Database opened;
    private @Nullable Playwright playwright;
    private @Nullable Browser browser;

    /** Without books. */
    Screens() {
        database = null;
    }

    /** With books in a database. */
    Screens(Supplier<Database> database) {
        this.database = database;
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        ToolboxRead.Sound sound = (ToolboxRead.Sound) ToolboxReader.demo();
        Clock clock = Clock.fixed(Instant.parse("2026-11-02T12:00:00Z"), ZoneOffset.UTC);
        opened = database == null ? null : database.get();
        Books books = opened == null ? null : new Books(opened, "garage", clock);
        if (books != null) {
            books.write(change -> {
                new Settings(books).set(change, "invented", "yes");
                return books;
            });
        }
        server = Server.start(0, new Garage(sound.toolbox(), clock, books));
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

    @Override
    public void afterAll(ExtensionContext context) {
        browser().close();
        Objects.requireNonNull(playwright).close();
        server().close();
        if (opened != null) {
            opened.close();
        }
    }

    private Browser browser() {
        return Objects.requireNonNull(browser);
    }

    private Server server() {
        return Objects.requireNonNull(server);
    }

    /** The books that the pages keep. */
    Books books() {
        return new Books(Objects.requireNonNull(opened), "garage", Clock.systemUTC());
    }

    /** Where the server is, with a slash at the end. */
    String address() {
        return server().address() + "/";
    }

    BrowserContext context(int width, ColorScheme scheme) {
        return browser()
                .newContext(new Browser.NewContextOptions()
                        .setViewportSize(width, 900)
                        .setColorScheme(scheme));
    }

    BrowserContext withoutScript() {
        return browser().newContext(new Browser.NewContextOptions().setJavaScriptEnabled(false));
    }

    static void picture(Page page, String name, boolean whole) {
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(PICTURES.resolve(name + ".png"))
                .setFullPage(whole));
    }
}
