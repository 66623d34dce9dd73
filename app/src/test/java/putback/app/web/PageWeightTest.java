package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.app.demo.BigGarage;
import putback.app.web.frame.Garage;
import putback.store.books.Books;
import putback.store.books.Job;
import putback.store.books.JobLine;
import putback.store.books.JobLines;
import putback.store.books.Jobs;
import putback.store.database.SqliteDatabase;

/** How heavy the pages of a garage of some years are. */
class PageWeightTest {
    /** As it is sent, packed: what a phone at the edge of the network gets in a breath. */
    private static final int MOST_BYTES = 150_000;

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-26T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void noPage_ofTwoThousandCarsAndTenThousandJobs_isHeavy() throws Exception {
        try (SqliteDatabase database = SqliteDatabase.open(folder.resolve("garage.db"))) {
            Books books = new Books(database, "garage", CLOCK);
            BigGarage.fill(books, 2000, 10_000, 1);
            try (Server server = Server.start(0, new Garage(null, CLOCK, books))) {
                Set<String> asked = new TreeSet<>();
                for (String route : server.routes()) {
                    if (route.startsWith("GET ") && !route.contains("{")) {
                        asked.add(route.substring(4));
                    }
                }
                asked.add("/search?q=shock");
                asked.add("/search?q=wh");
                asked.add("/plan?sheet=demo-van&renew=spring&renew=damper&renew=pads&side=both");
                asked.add("/price?sheet=demo-van&renew=spring&renew=damper&renew=pads&side=both");
                asked.addAll(jobs(books));
                assertThat(asked).hasSizeGreaterThan(25);
                for (String path : asked) {
                    HttpResponse<byte[]> answer = client.send(
                            HttpRequest.newBuilder(URI.create(server.address() + path))
                                    .header("Accept-Encoding", "gzip")
                                    .build(),
                            HttpResponse.BodyHandlers.ofByteArray());
                    assertThat(answer.body().length).as(path).isLessThan(MOST_BYTES);
                }
            }
        }
    }

    /** One job of each stage that is open, with its car. */
    private static Set<String> jobs(Books books) {
        Map<String, Job> stages = new HashMap<>();
        for (JobLine line : new JobLines(books).open(40)) {
            Job job = new Jobs(books).find(line.id()).orElseThrow();
            stages.put(job.stage().words(), job);
        }
        Set<String> pages = new TreeSet<>();
        for (Job job : stages.values()) {
            pages.add("/job/" + job.id());
            pages.add("/job/" + job.id() + "/scope");
            pages.add("/job/" + job.id() + "/photos");
            pages.add("/car/" + job.car());
        }
        return pages;
    }
}
