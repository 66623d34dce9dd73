package putback.benchmarks;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import putback.app.demo.BigGarage;
import putback.app.web.Server;
import putback.app.web.frame.Garage;
import putback.store.books.Books;
import putback.store.books.Job;
import putback.store.books.JobLine;
import putback.store.books.JobLines;
import putback.store.books.Jobs;
import putback.store.database.SqliteDatabase;

/**
 * How long each kind of page takes, and how large it is, in a garage of 2,000 cars and 10,000 jobs; beside it a small
 * file of the same server, which is what asking costs by itself.
 */
public final class PageTimes {
    private static final int WARM = 60;
    private static final int ROUNDS = 200;

    private final HttpClient client = HttpClient.newHttpClient();
    private final String address;

    private PageTimes(String address) {
        this.address = address;
    }

    /** Prints its figures; the folder given must be on the disk that is asked about. */
    public static void main(String[] words) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(words.length > 0 ? words[0] : "."), "pages");
        try (SqliteDatabase database = SqliteDatabase.open(folder.resolve("garage.db"))) {
            Books books = new Books(database, "garage", Clock.systemUTC());
            BigGarage.fill(books, 2000, 10_000, 1);
            try (Server server = Server.start(0, new Garage(null, Clock.systemUTC(), books))) {
                new PageTimes(server.address()).run(pages(books));
            }
        } finally {
            for (Path file : List.of(folder.resolve("garage.db"), folder)) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static Map<String, String> pages(Books books) {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("a small file", "/mark.svg");
        pages.put("the day", "/");
        pages.put("search, a common word", "/search?q=shock");
        pages.put("search, a plate", "/search?q=wh+12");
        pages.put("settings", "/settings");
        pages.put("who did what", "/audit");
        pages.put("a new car", "/new-car");
        pages.put("a sheet", "/sheet/demo-van");
        pages.put("a plan", "/plan?sheet=demo-van&renew=spring&renew=damper&side=both");
        pages.put("its price", "/price?sheet=demo-van&renew=spring&renew=damper&side=both");
        pages.put("tightening", "/tightening?torque=98+Nm&thread=M12x1.25&class=10.9");
        for (JobLine line : new JobLines(books).open(40)) {
            Job job = new Jobs(books).find(line.id()).orElseThrow();
            String stage = job.stage().words();
            if (pages.putIfAbsent("a job, " + stage, "/job/" + job.id()) == null) {
                pages.putIfAbsent("its scope", "/job/" + job.id() + "/scope");
                pages.putIfAbsent("its car", "/car/" + job.car());
                pages.putIfAbsent("its data at the car", "/job/" + job.id() + "/carside.json");
            }
        }
        return pages;
    }

    private void run(Map<String, String> pages) throws IOException, InterruptedException {
        System.out.printf(Locale.ROOT, "%-26s %8s %10s %10s%n", "page", "kB", "median ms", "99 % ms");
        for (Map.Entry<String, String> page : pages.entrySet()) {
            for (int i = 0; i < WARM; i++) {
                get(page.getValue());
            }
            double[] ms = new double[ROUNDS];
            int bytes = 0;
            for (int i = 0; i < ROUNDS; i++) {
                long start = System.nanoTime();
                bytes = get(page.getValue());
                ms[i] = (System.nanoTime() - start) / 1e6;
            }
            Arrays.sort(ms);
            System.out.printf(
                    Locale.ROOT,
                    "%-26s %8.1f %10.1f %10.1f%n",
                    page.getKey(),
                    bytes / 1000.0,
                    ms[ROUNDS / 2],
                    ms[ROUNDS * 99 / 100]);
        }
    }

    private int get(String path) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = client.send(
                HttpRequest.newBuilder(URI.create(address + path))
                        .header("Accept-Encoding", "gzip")
                        .build(),
                HttpResponse.BodyHandlers.ofByteArray());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(path + " answers " + answer.statusCode());
        }
        return answer.body().length;
    }
}
