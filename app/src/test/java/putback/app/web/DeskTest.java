package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.app.web.frame.Garage;
import putback.job.Stage;
import putback.store.books.Books;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.database.SqliteDatabase;

/** Cars and jobs as they are typed in at the desk. */
class DeskTest {
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-11-02T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private final HttpClient client = HttpClient.newHttpClient();
    private SqliteDatabase database;
    private Server server;

    @BeforeEach
    void open() {
        database = SqliteDatabase.open(folder.resolve("garage.db"));
        server = Server.start(0, new Garage(null, NOON, new Books(database, "garage", NOON)));
    }

    @AfterEach
    void close() {
        server.close();
        database.close();
    }

    private HttpResponse<String> post(String path, Map<String, String> form) throws Exception {
        StringBuilder body = new StringBuilder();
        form.forEach((name, value) -> body.append(name)
                .append('=')
                .append(URLEncoder.encode(value, StandardCharsets.UTF_8))
                .append('&'));
        return client.send(
                HttpRequest.newBuilder(URI.create(server.address() + path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private String get(String path) throws Exception {
        return client.send(
                        HttpRequest.newBuilder(URI.create(server.address() + path))
                                .build(),
                        HttpResponse.BodyHandlers.ofString())
                .body();
    }

    private String kept(String path, Map<String, String> form) throws Exception {
        HttpResponse<String> answer = post(path, form);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return answer.headers().firstValue("Location").orElseThrow();
    }

    @Test
    void aPlateThatIsThere_isAskedAbout_howeverItIsSpelt() throws Exception {
        String car = kept("/car", Map.of("plate", "WH12 CDE"));
        HttpResponse<String> again = post("/car", Map.of("plate", "wh-12 cde", "note", "blue"));
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("in the books already", car, "blue");
        assertThat(kept("/car", Map.of("plate", "wh 12cde", "another", "yes"))).isNotEqualTo(car);
        kept("/car", Map.of("plate", "WH12 CDF"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "distance;abc;no reading of a car",
                "distance;-5;no reading of a car",
                "fl;tall;front left tall is no height",
                "rr;3 km;rear right 3 km is no height",
                "rl;0.1;is no height",
                "promised;yesterday;no day and time",
                "complaint;;write down what is wrong",
            })
    void whatCannotBeReckonedWith_isSaid_andWhatWasTypedStaysThere(String field, String typed, String said)
            throws Exception {
        String car = kept("/car", Map.of("plate", "WH 12"));
        Map<String, String> form = new HashMap<>(Map.of("complaint", "knocks", "conditions", "cold mornings"));
        form.put(field, typed == null ? "" : typed);
        HttpResponse<String> answer = post(car + "/job", form);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(said, "cold mornings");
    }

    @Test
    void theClockOfACar_doesNotRunBackwards_andNobodyBuiltItTomorrow() throws Exception {
        String car = kept("/car", Map.of("plate", "WH 12"));
        String job = kept(car + "/job", Map.of("complaint", "knocks", "distance", "120 400"));
        Map<String, String> out =
                Map.of("complaint", "knocks", "distance", "120400", "distance-out", "99", "version", "1");
        assertThat(post(job + "/arrival", out).body()).contains("mileage out 99 is less than 120400");
        assertThat(post("/car", Map.of("plate", "WH 13", "built", "2031-01")).body())
                .contains("built 2031-01 lies ahead");
    }

    @Test
    void aComeback_isSeenFromBothItsJobs_andAnOpenJobFromItsCar() throws Exception {
        String car = kept("/car", Map.of("plate", "WH 12"));
        String first = kept(car + "/job", Map.of("complaint", "knocks"));
        Map<String, String> again =
                Map.of("complaint", "knocks again", "comeback", first.substring(first.lastIndexOf('/') + 1));
        assertThat(get(car)).contains("is open already", first).doesNotContain("Is it about earlier work");
        assertThat(post(car + "/job", again).body()).contains("only a job that was handed over can come back");
        handOver(first);
        assertThat(get(car)).contains("Is it about earlier work");
        String second = kept(car + "/job", again);
        assertThat(get(second)).contains("Comes back about", first);
        assertThat(get(first)).contains("Came back", second);
    }

    private void handOver(String job) {
        Books books = new Books(database, "garage", NOON);
        Jobs jobs = new Jobs(books);
        Job kept = jobs.find(job.substring(job.lastIndexOf('/') + 1)).orElseThrow();
        books.write(change -> jobs.move(change, kept, Stage.HANDED_OVER, "Mara", ""));
    }

    @Test
    void anotherLookAtACar_isBookedForADayToCome_withAMileageItCanHave_andDoneWithWhatWasSeen() throws Exception {
        String car = kept("/car", Map.of("plate", "WH 12"));
        String job = kept(car + "/job", Map.of("complaint", "knocks", "distance", "120 400"));
        assertThat(post(job + "/recheck", Map.of("due", "2020-01-01")).body())
                .contains("the day 2020-01-01 has passed");
        assertThat(post(job + "/recheck", Map.of("due", "2026-99-99")).body()).contains("is no day");
        assertThat(post(job + "/recheck", Map.of("due", "2026-11-20", "distance", "5"))
                        .body())
                .contains("mileage 5 is less than 120400")
                .contains("value=\"5\"");
        kept(job + "/recheck", Map.of("due", "2026-11-20", "distance", "120.450"));
        assertThat(get(job)).contains("due 2026-11-20 or at 120450");
        Matcher row = Pattern.compile(job + "/recheck/[^\"]+").matcher(get(job));
        assertThat(row.find()).isTrue();
        Map<String, String> done =
                new HashMap<>(Map.of("version", "1", "distance", "abc", "seen", "120 N·m, none moved"));
        assertThat(post(row.group(), done).body())
                .contains("mileage abc is no reading", "value=\"abc\"", "value=\"120 N·m, none moved\"");
        done.put("distance", "120455");
        done.put("seen", "");
        assertThat(post(row.group(), done).body()).contains("write down what was seen");
        done.put("seen", "120 N·m, none moved");
        kept(row.group(), done);
        assertThat(get(job)).contains("120 N·m, none moved").doesNotContain("due 2026-11-20");
    }

    @Test
    void aJob_isFoundByWhatIsRenewed_byWhatWasFound_andItsCarByAPhoneNumber() throws Exception {
        String car = kept("/car", Map.of("plate", "WH 12", "owner", "Orla Quent", "phone", "0555 1234"));
        String job = kept(car + "/job", Map.of("complaint", "knocks"));
        kept(job + "/scope", Map.of("sheet", "front-strut", "renew", "complete-strut", "side", "left", "version", "1"));
        kept(job + "/finding", Map.of("words", "wire of the sensor rubbed", "urgency", "soon"));
        assertThat(get("/search?q=complete+strut")).contains(job);
        assertThat(get("/search?q=sensor+wire")).contains(job);
        assertThat(get("/search?q=05551234")).contains("Orla Quent", car);
        assertThat(get("/search?q=gearbox")).doesNotContain(job);
        assertThat(post(job + "/scope", Map.of("sheet", "front-strut", "side", "left", "version", "2"))
                        .body())
                .contains("tick at least one thing");
    }

    @Test
    void aNewCarsPlan_leadsToItsJob_withWhatWasTicked() throws Exception {
        String card = kept(
                "/new-car",
                Map.of("plate", "WH 14", "sheet", "0", "renew.0", "pads", "side.0", "left", "side", "left"));
        String car = card.substring(0, card.indexOf("/card"));
        String query = card.substring(card.indexOf('?'));
        assertThat(get("/plan" + query)).contains("Open a job for this car", car + "?");
        assertThat(get(car + query)).contains("name=\"renew\" value=\"pads\"");
        String job = kept(car + "/job", Map.of("complaint", "grinds", "renew", "pads", "side", "left"));
        assertThat(get(job)).contains("Brake pad").doesNotContain("Nothing is named yet");
    }

    @Test
    void aPromiseThatHasPassed_standsFirstOnTheDay() throws Exception {
        String car = kept("/car", Map.of("plate", "WH 12"));
        kept(car + "/job", Map.of("complaint", "knocks", "promised", "2026-11-02T11:00"));
        assertThat(get("/")).contains("Promised for before now", "promised 2026-11-02 11:00");
    }
}
