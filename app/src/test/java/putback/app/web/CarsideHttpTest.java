package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.store.books.Heard;
import putback.store.books.HeardDevices;
import putback.store.books.Job;

/** What devices send and hear, without a browser. */
class CarsideHttpTest {
    private static final String UNDO = "{\"id\":\"tab-1\",\"at\":\"2026-03-02T09:14:05Z\",\"by\":\"Mara\","
            + "\"device\":\"tab\",\"seq\":1,\"do\":\"undo\",\"joint\":\"left.wheel-nuts\"}";
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @RegisterExtension
    private static final CarsideBench BENCH = new CarsideBench();

    private static HttpResponse<String> get(String path) throws Exception {
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create(BENCH.address() + path)).build(), BodyHandlers.ofString());
    }

    private static HttpResponse<String> post(String path, String type, String body) throws Exception {
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create(BENCH.address() + path))
                        .header("Content-Type", type)
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    private static HttpResponse<String> send(Job job, String body) throws Exception {
        return post("/job/" + job.id() + "/events", "application/x-ndjson", body);
    }

    @Test
    void whatIsSent_isAnswered_andReadBySince() throws Exception {
        Job job = BENCH.job("demo-van", "damper", "both");
        HttpResponse<String> first = send(job, UNDO);
        assertThat(first.statusCode()).isEqualTo(200);
        assertThat(first.body()).contains("\"last\":1", "\"kept\":[\"tab-1\"]", "\"gaps\":[]");
        String third = UNDO.replace("tab-1", "tab-3").replace("\"seq\":1", "\"seq\":3");
        assertThat(send(job, UNDO + "\n" + third).body())
                .contains(
                        "\"kept\":[\"tab-1\"]", "\"waiting\":[\"tab-3\"]", "{\"device\":\"tab\",\"from\":2,\"to\":2}");
        assertThat(get("/job/" + job.id() + "/events").body()).isEqualTo("{\"n\":1," + UNDO.substring(1) + "\n");
        assertThat(get("/job/" + job.id() + "/events?since=1").body()).isEmpty();
        assertThat(get("/job/" + job.id() + "/carside.json").body())
                .contains("\"last\":1", "\"left.wheel-nuts\":\"out\"", "\"needs\":[", "\"settled\":false");
    }

    @Test
    void whatStaysOpenOnPurpose_isSaidOnTheJobsPage_onTheDay_andOnTheCarsPage() throws Exception {
        Job job = BENCH.job("demo-van", "damper", "left");
        assertThat(get("/job/" + job.id()).body()).doesNotContain("Not to be driven");
        send(
                job,
                UNDO.replace("\"undo\",\"joint\":\"left.wheel-nuts\"", "\"carry\",\"part\":\"left.damper\"")
                        .replace("}", ",\"reason\":\"goes on a trailer\"}"));
        for (String page : new String[] {"/job/" + job.id(), "/", "/car/" + job.car()}) {
            assertThat(get(page).body()).as(page).contains("Not to be driven", "carried by Mara: goes on a trailer");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "not json|events:2:1: ",
                "{\"do\":\"undo\",\"joint\":\"a\"}|needs id, at and by",
                "{\"id\":\"1\",\"at\":\"2026-03-02T09:14:05Z\",\"by\":\"M\",\"do\":\"undo\",\"joint\":\"a\"}|needs device and seq",
                "{\"id\":\"1\",\"do\":\"unscrew\"}|is nothing that is done",
                "{\"id\":\"1\",\"do\":\"undo\"}|has no joint",
                "``|1 to 1000 events"
            })
    void whatIsNoEvent_isRefusedInWords_andNothingIsKept(String body, String said) throws Exception {
        Job job = BENCH.job("demo-van", "damper", "both");
        HttpResponse<String> answer = send(job, body.isEmpty() ? body : UNDO + "\n" + body);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).startsWith("{\"faults\":[");
        assertThat(answer.body().contains(said) || said.equals("no map"))
                .as(answer.body())
                .isTrue();
        assertThat(get("/job/" + job.id() + "/events").body()).isEmpty();
    }

    @Test
    void whatIsNotThere_isTold() throws Exception {
        assertThat(get("/job/none/carside").statusCode()).isEqualTo(404);
        assertThat(get("/job/none/carside.json").statusCode()).isEqualTo(404);
        assertThat(get("/job/none/events").statusCode()).isEqualTo(404);
        assertThat(post("/job/none/events", "application/x-ndjson", UNDO).statusCode())
                .isEqualTo(404);
        Job job = BENCH.job("demo-van", "damper", "both");
        assertThat(get("/job/" + job.id() + "/events?since=x").statusCode()).isEqualTo(400);
        assertThat(post("/job/" + job.id() + "/events", "text/plain", UNDO).statusCode())
                .isEqualTo(415);
        Job unnamed = BENCH.job("", "", "both");
        HttpResponse<String> answer = get("/job/" + unnamed.id() + "/carside.json");
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("does not say what is to be renewed");
        assertThat(get("/carside/none.js").statusCode()).isEqualTo(404);
        assertThat(get("/carside/worker.js").headers().firstValue("service-worker-allowed"))
                .hasValue("/job/");
    }

    @Test
    void aDevice_saysWhatItHoldsBack_andHowItsClockIs() throws Exception {
        Job job = BENCH.job("demo-van", "damper", "both");
        String form = "application/x-www-form-urlencoded";
        String said = "device=tab&by=Mara&unsent=3&clock=2020-01-01T00:00:00Z";
        assertThat(post("/job/" + job.id() + "/heard", form, said).body()).contains("\"now\":\"20");
        Heard heard = new HeardDevices(BENCH.books()).of(job.id()).get(0);
        assertThat(heard.unsent()).isEqualTo(3);
        assertThat(heard.aheadSeconds()).isLessThan(-100_000_000);
        assertThat(post("/job/" + job.id() + "/heard", form, "unsent=1").statusCode())
                .isEqualTo(400);
        assertThat(post("/job/" + job.id() + "/heard", form, "device=tab&unsent=-1")
                        .statusCode())
                .isEqualTo(400);
    }

    @Test
    void theStream_sendsWhatWasMissed_thenWhatHappens() throws Exception {
        Job job = BENCH.job("demo-van", "damper", "both");
        send(job, UNDO);
        HttpRequest request = HttpRequest.newBuilder(
                        URI.create(BENCH.address() + "/job/" + job.id() + "/events/stream?since=0"))
                .header("Accept", "text/event-stream")
                .build();
        HttpResponse<java.io.InputStream> stream = CLIENT.send(request, BodyHandlers.ofInputStream());
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(stream.body(), StandardCharsets.UTF_8))) {
            assertThat(next(lines)).contains("\"n\":1", "tab-1");
            send(job, UNDO.replace("tab-1", "tab-2").replace("\"seq\":1", "\"seq\":2"));
            assertThat(next(lines)).contains("\"n\":2", "tab-2");
        }
    }

    private static String next(BufferedReader lines) throws Exception {
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (line.startsWith("data:")) {
                return line;
            }
        }
        throw new AssertionError("the stream ended");
    }
}
