package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import putback.app.web.frame.Garage;
import putback.store.books.Arrival;
import putback.store.books.Audit;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Heights;
import putback.store.books.Jobs;
import putback.store.books.Links;
import putback.store.books.Saved;
import putback.store.books.Settings;

/** What people try who mean harm, at the real server. */
class AttackTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static Lan lan;
    /** The same books, served to this machine alone. */
    private static Server here;

    @BeforeAll
    static void start() throws Exception {
        lan = new Lan();
        here = Server.start(0, new Garage(null, lan.clock, lan.books));
    }

    @AfterAll
    static void stop() {
        here.close();
        lan.close();
    }

    private static HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create(here.address() + path)).build(), BodyHandlers.ofString());
    }

    private static HttpRequest.Builder form(String path, String body) {
        return HttpRequest.newBuilder(URI.create(here.address() + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return CLIENT.send(request.build(), BodyHandlers.ofString());
    }

    /** On a connection of its own: the server closes one that it cannot make sense of. */
    private static HttpResponse<String> alone(HttpRequest.Builder request) throws IOException, InterruptedException {
        return HttpClient.newHttpClient().send(request.build(), BodyHandlers.ofString());
    }

    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket(
                InetAddress.getLoopbackAddress(), URI.create(here.address()).getPort())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The secret of a customer's link to a new job. */
    private static String link(String plate, String complaint) {
        return lan.books.write(change -> {
            Car car = new Car("", "", plate, "", "Tamsel", "Dory", "", "km", "", "", 0);
            String id = ((Saved.Done<Car>) new Cars(lan.books).save(change, car))
                    .value()
                    .id();
            Arrival arrival = new Arrival(complaint, "", "1", "", new Heights("", "", "", ""), "");
            String job = new Jobs(lan.books)
                    .open(change, id, arrival, "", "somebody")
                    .id();
            return new Links(lan.books).make(change, job, Duration.ofDays(14));
        });
    }

    @Test
    void aCustomersLink_opensOneEstimate_andNothingElse() throws Exception {
        String one = link("AA 1", "rattles");
        String other = link("BB 2", "leans");
        assertThat(lan.get("/said/" + one, "").body()).contains("AA 1").doesNotContain("BB 2");
        assertThat(lan.get("/said/" + other, "").body()).contains("BB 2").doesNotContain("AA 1");
        for (String guess : List.of(
                one.substring(1), one + "x", one.toLowerCase(java.util.Locale.ROOT), "%27+or+1%3D1", "..%2F" + one)) {
            assertThat(lan.get("/said/" + guess, "").statusCode()).as(guess).isIn(400, 404);
        }
        assertThat(lan.get("/said/" + one + "/../../", "").statusCode()).isIn(303, 400);
        assertThat(lan.get("/said/" + one, "").headers().allValues("Set-Cookie"))
                .isEmpty();
    }

    @Test
    void aLink_endsByTime() throws Exception {
        try (Lan later = new Lan()) {
            String token = later.books.write(change -> {
                Car car = new Car("", "", "CC 3", "", "", "", "", "km", "", "", 0);
                String id = ((Saved.Done<Car>) new Cars(later.books).save(change, car))
                        .value()
                        .id();
                Arrival arrival = new Arrival("pulls", "", "1", "", new Heights("", "", "", ""), "");
                String job =
                        new Jobs(later.books).open(change, id, arrival, "", "x").id();
                return new Links(later.books).make(change, job, Duration.ofDays(14));
            });
            assertThat(later.get("/said/" + token, "").statusCode()).isEqualTo(200);
            later.clock.forward(Duration.ofDays(14));
            assertThat(later.get("/said/" + token, "").statusCode()).isEqualTo(404);
            assertThat(later.post("/said/" + token, "", Map.of("who", "Ann", "yes", "yes"))
                            .statusCode())
                    .isEqualTo(404);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/job/..%2F..%2Fetc%2Fpasswd",
                "/car/..%2f..%2fgarage.db",
                "/sheet/..%2F..%2Fgarage",
                "/sheet/%2Fetc%2Fpasswd",
                "/job/x%00y",
                "/page.css/../../garage.db",
                "/..%2Fgarage.db",
                "/job/%27%20or%20%271%27=%271",
                "/car/1;drop%20table%20car",
                "/car/%F0%9F%9A%97/card",
            })
    void aNameThatIsAPathOrSql_findsNothing(String path) throws Exception {
        HttpResponse<String> answer = get(path);
        assertThat(answer.statusCode()).isIn(400, 404);
        assertThat(answer.body()).doesNotContain("root:", "SQLite format", "Exception", "\tat ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"%27%20or%201%3D1%20--", "%25", "_", "%22", "a%27%3Bdrop%20table%20car%3B--", "%5C", "%28%29%2A"
            })
    void sqlInTheSearch_isOnlyText(String typed) throws Exception {
        link("ZZ 9", "knocks");
        HttpResponse<String> answer = get("/search?q=" + typed);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).doesNotContain("ZZ 9");
        assertThat(get("/search?q=zz9").body()).contains("ZZ 9");
    }

    @ParameterizedTest
    @CsvSource({
        "Origin,https://elsewhere.example",
        "Origin,null",
        "Origin,http://127.0.0.1",
        "Origin,http://localhost:1",
        "Sec-Fetch-Site,cross-site",
        "Sec-Fetch-Site,same-site"
    })
    void aFormFromAnotherPlace_doesNothing(String header, String value) throws Exception {
        HttpResponse<String> answer = send(form("/settings", "garage=Forged").header(header, value));
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(new Settings(lan.books).all()).doesNotContainValue("Forged");
    }

    @Test
    void aFormFromAnotherPlace_doesNothing_evenWithTheSession() throws Exception {
        String owner = lan.signedIn(Lan.OWNER);
        HttpRequest request = lan.to("/settings", owner)
                .header("Origin", "null")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString("garage=Forged"))
                .build();
        assertThat(lan.send(request).statusCode()).isEqualTo(403);
        assertThat(new Settings(lan.books).all()).doesNotContainValue("Forged");
    }

    @Test
    void anotherNameForThisMachine_isRefused() throws Exception {
        for (String host :
                List.of("elsewhere.example", "127.0.0.1.elsewhere.example", "localhost.elsewhere.example", "[::1]")) {
            assertThat(raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n"))
                    .startsWith("HTTP/1.1 403")
                    .doesNotContain("<html");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "PROPFIND", "nonsense"})
    void otherMethods_areNotAnswered(String method) throws Exception {
        String answer = raw(method + " /settings HTTP/1.1\r\nHost: 127.0.0.1\r\nX-Secret: told\r\n"
                + "Content-Length: 0\r\nConnection: close\r\n\r\n");
        assertThat(answer).matches("(?s)HTTP/1\\.1 (4\\d\\d|501).*").doesNotContain("told", "Exception");
    }

    @Test
    void aFormOfMoreThanAMegabyte_isNotRead() throws Exception {
        String long1 = "note=" + "a".repeat(1_100_000);
        assertThat(send(form("/car", long1)).statusCode()).isEqualTo(413);
        HttpRequest.Builder chunked = HttpRequest.newBuilder(URI.create(here.address() + "/car"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofInputStream(
                        () -> new java.io.ByteArrayInputStream(long1.getBytes(StandardCharsets.UTF_8))));
        assertThat(send(chunked).statusCode()).isEqualTo(413);
        assertThat(get("/").statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "multipart/form-data",
                "multipart/form-data; boundary=",
                "multipart/form-data; boundary=x",
                "multipart/form-data; boundary=\"x",
            })
    void aBrokenUpload_isRefusedInWords(String type) throws Exception {
        String token = link("MM 1", "squeaks");
        assertThat(token).isNotEmpty();
        String car = new Cars(lan.books).search("MM1", 1).get(0).id();
        for (String body : List.of(
                "",
                "--x",
                "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"../../a\"\r\n",
                "\u0000\u0001")) {
            HttpResponse<String> answer =
                    alone(HttpRequest.newBuilder(URI.create(here.address() + "/car/" + car + "/sheet"))
                            .header("Content-Type", type)
                            .POST(BodyPublishers.ofString(body)));
            assertThat(answer.statusCode()).as(type + " / " + body).isBetween(400, 499);
            assertThat(answer.body()).doesNotContain("Exception", "\tat ");
        }
    }

    @Test
    void anUploadsName_isNoPath() throws Exception {
        link("NN 1", "squeaks");
        String car = new Cars(lan.books).search("NN1", 1).get(0).id();
        String body =
                "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"../../../<script>.yaml\"\r\n\r\n"
                        + "sheet: [\r\n--x--\r\n";
        HttpResponse<String> answer = send(HttpRequest.newBuilder(URI.create(here.address() + "/car/" + car + "/sheet"))
                .header("Content-Type", "multipart/form-data; boundary=x")
                .POST(BodyPublishers.ofString(body)));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).doesNotContain("<script>.yaml");
    }

    @Test
    void whoIsWorking_isKept_andStandsBesideWhatIsDone() throws Exception {
        HttpResponse<String> answer =
                send(form("/me", "name=Ada+%3Cb%3E").header("Referer", here.address() + "/sheets?a=1"));
        assertThat(answer.headers().firstValue("Location").orElse("")).endsWith("/sheets?a=1");
        String set = answer.headers().firstValue("Set-Cookie").orElse("");
        assertThat(set).matches("putback-me=[A-Za-z0-9_-]+; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict");
        String cookie = set.substring(0, set.indexOf(';'));
        send(form("/settings", "garage=Brand+and+Reed").header("Cookie", cookie));
        assertThat(new Audit(lan.books).latest(1).get(0).by()).isEqualTo("Ada <b>");
        HttpResponse<String> page = send(
                HttpRequest.newBuilder(URI.create(here.address() + "/audit")).header("Cookie", cookie));
        assertThat(page.body()).contains("Ada &lt;b&gt;").doesNotContain("<b>\"");
        assertThat(get("/").body()).contains("Who is working?");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ada%0d%0aSet-Cookie%3a%20evil%3d1",
                "%0d%0a%0d%0a%3Chtml%3E",
                "a%3B%20Domain%3Delsewhere.example"
            })
    void aNameWithLineEnds_makesNoHeader(String name) throws Exception {
        HttpResponse<String> answer = send(form("/me", "name=" + name));
        assertThat(answer.headers().allValues("Set-Cookie")).hasSize(1);
        assertThat(answer.headers().firstValue("Set-Cookie").orElse("")).doesNotContain("evil", "Domain");
        assertThat(answer.body()).doesNotContain("<html>", "evil");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "putback-me=%%%",
                "putback-me=a b",
                "putback-me=" + "A",
                "__Host-putback=' or 1=1 --",
                "=;;=",
                "putback-me=PHNjcmlwdD4"
            })
    void aStrangeCookie_doesNoHarm(String cookie) throws Exception {
        HttpResponse<String> answer =
                send(HttpRequest.newBuilder(URI.create(here.address() + "/")).header("Cookie", cookie));
        assertThat(answer.statusCode()).isIn(200, 400);
        assertThat(answer.body()).doesNotContain("<script>", "Exception");
        assertThat(lan.get("/", cookie).statusCode()).isIn(303, 400);
    }

    @Test
    void whoeverSignedIn_standsInTheAudit_whateverTheFormSays() throws Exception {
        String owner = lan.signedIn(Lan.OWNER);
        lan.post("/settings", owner, Map.of("garage", "Reed", "by", "Somebody Else"));
        assertThat(new Audit(lan.books).latest(1).get(0).by()).isEqualTo(Lan.OWNER);
    }
}
