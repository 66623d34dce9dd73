package putback.app.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import putback.app.web.frame.Garage;
import putback.store.books.Arrival;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Heights;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.books.Scope;
import putback.store.database.SqliteDatabase;
import putback.store.sheets.ToolboxRead;
import putback.store.sheets.ToolboxReader;

/** A real browser before the real server of a garage that keeps books, with jobs of the demonstration van. */
final class CarsideBench implements BeforeAllCallback, AfterAllCallback {
    private static final Path PICTURES = Path.of("target", "screenshots");

    private @Nullable Path folder;
    private @Nullable SqliteDatabase database;
    private @Nullable Books books;
    private @Nullable Server server;
    private @Nullable Playwright playwright;
    private @Nullable Browser browser;

    @Override
    public void beforeAll(ExtensionContext context) throws IOException {
        folder = Files.createTempDirectory("carside");
        SqliteDatabase opened = SqliteDatabase.open(folder.resolve("garage.db"));
        database = opened;
        books = new Books(opened, "g1", Clock.systemUTC());
        ToolboxRead.Sound toolbox = (ToolboxRead.Sound) ToolboxReader.demo();
        server = Server.start(0, new Garage(toolbox.toolbox(), Clock.systemUTC(), books));
    }

    /** Started with the first page that asks for it. */
    private Browser browser() {
        if (browser == null) {
            playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            browser = playwright
                    .chromium()
                    .launch(new BrowserType.LaunchOptions()
                            .setExecutablePath(Path.of("/usr/bin/chromium"))
                            .setArgs(List.of("--headless", "--no-sandbox", "--disable-gpu", "--no-first-run")));
        }
        return Objects.requireNonNull(browser);
    }

    @Override
    public void afterAll(ExtensionContext context) throws IOException {
        if (browser != null) {
            browser.close();
            Objects.requireNonNull(playwright).close();
        }
        Objects.requireNonNull(server).close();
        Objects.requireNonNull(database).close();
        try (Stream<Path> files = Files.walk(Objects.requireNonNull(folder))) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    Books books() {
        return Objects.requireNonNull(books);
    }

    String address() {
        return Objects.requireNonNull(server).address();
    }

    /** A way to the server that can be cut. */
    Cable cable() {
        return Cable.to(URI.create(address()).getPort());
    }

    /** A new job that renews something on a stock sheet. */
    Job job(String sheet, String renew, String side) {
        return job(books(), sheet, renew, side);
    }

    static Job job(Books books, String sheet, String renew, String side) {
        Car car = new Car("", "", "WH 12 K", "", "Tamsel", "Dory van", "2014", "km", "", "", 0);
        return books.write(change -> {
            Saved<Car> saved = new Cars(books).save(change, car);
            String id = ((Saved.Done<Car>) saved).value().id();
            Arrival arrival = new Arrival("bangs over kerbs", "rear, when loaded", "128400", "", Heights.NONE, "");
            Job opened = new Jobs(books).open(change, id, arrival, "", "Mara");
            Saved<Job> scoped = new Jobs(books).save(change, opened.with(new Scope(sheet, renew, side, "", "")));
            return ((Saved.Done<Job>) scoped).value();
        });
    }

    BrowserContext device(int width, int height, ColorScheme scheme) {
        return browser()
                .newContext(new Browser.NewContextOptions()
                        .setViewportSize(width, height)
                        .setColorScheme(scheme));
    }

    /** Opens a job's page as somebody whose name the device knows. */
    Page open(BrowserContext device, Job job, String name) {
        return open(device, address(), job, name);
    }

    Page open(BrowserContext device, String address, Job job, String name) {
        device.addInitScript("localStorage.setItem('putback-name', '" + name + "')");
        Page page = device.newPage();
        page.navigate(address + "/job/" + job.id() + "/carside");
        page.waitForSelector("#main h1");
        return page;
    }

    static void picture(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(PICTURES.resolve("carside-" + name + ".png"))
                .setFullPage(true));
    }
}
