package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import putback.job.Stage;
import putback.store.books.Approval;
import putback.store.books.Approvals;
import putback.store.books.CarSheets;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.books.Scope;

/** What one job's ledger changes in the figures of others. */
class LearntHttpTest {
    private static final String LEDGER = """
            {"do":"height","height":"raised","at":"2026-03-02T09:00:00Z"}
            {"do":"note","joint":"left.damper-lower","reason":"Will not move (stuck)","at":"2026-03-02T09:02:00Z"}
            {"do":"note","joint":"left.damper-lower","reason":"Will not move (stuck): tried heat, yes","at":"2026-03-02T09:11:00Z"}
            {"do":"undo","joint":"left.damper-lower","at":"2026-03-02T09:13:00Z"}
            {"do":"start","joint":"left.damper-lower","at":"2026-03-02T09:14:00Z"}
            {"do":"tighten","joint":"left.damper-lower","torqueNm":70,"at":"2026-03-02T09:19:00Z"}
            """;
    private static final String OWN = """
            sheet: car-x
            title: The grey van
            base: demo-van
            """;
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @RegisterExtension
    private static final CarsideBench BENCH = new CarsideBench();

    private static String get(String path) throws Exception {
        return CLIENT.send(
                        HttpRequest.newBuilder(URI.create(BENCH.address() + path))
                                .build(),
                        BodyHandlers.ofString())
                .body();
    }

    private static int post(String path, String type, String body) throws Exception {
        HttpResponse<String> answer = CLIENT.send(
                HttpRequest.newBuilder(URI.create(BENCH.address() + path))
                        .header("Content-Type", type)
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
        return answer.statusCode();
    }

    private static Job job(String sheet) {
        Job job = BENCH.job(sheet, "damper", "both");
        Scope scope = new Scope(sheet, "damper", "both", "", "3");
        Saved<Job> saved = BENCH.books().write(change -> new Jobs(BENCH.books()).save(change, job.with(scope)));
        return ((Saved.Done<Job>) saved).value();
    }

    private static void send(Job job, String ledger) throws Exception {
        StringBuilder lines = new StringBuilder();
        int seq = 0;
        for (String line : ledger.strip().split("\n", -1)) {
            seq++;
            lines.append("{\"id\":\"tab-" + seq + "\",\"by\":\"Mara\",\"device\":\"tab\",\"seq\":" + seq + ",")
                    .append(line.substring(1))
                    .append('\n');
        }
        assertThat(post("/job/" + job.id() + "/events", "application/x-ndjson", lines.toString()))
                .isEqualTo(200);
    }

    private static void move(Job job, Stage to) throws Exception {
        Job now = new Jobs(BENCH.books()).find(job.id()).orElseThrow();
        String form = "version=" + now.version() + "&to=" + to.words().replace(' ', '+');
        assertThat(post("/job/" + job.id() + "/move", "application/x-www-form-urlencoded", form))
                .isEqualTo(303);
    }

    @Test
    void aFinishedJob_teachesThoseOfItsFamily_untilItIsOpenedAgain_andWhatComesLateCountsToo() throws Exception {
        Job next = job("demo-van");
        Job own = job("car");
        BENCH.books().write(change -> new CarSheets(BENCH.books()).add(change, own.car(), 0, OWN, "Mara", "by hand"));
        Job first = job("twist-beam");
        Approval yes = new Approval("", first.id(), "Orla", "here", "", true, "", "", "", "Mara", "");
        BENCH.books().write(change -> {
            new Approvals(BENCH.books()).add(change, yes);
            return new Jobs(BENCH.books()).move(change, first, Stage.UNDER_WAY, "Mara", "");
        });
        String[] lines = LEDGER.strip().split("\n", -1);
        send(first, String.join("\n", lines[0], lines[1], lines[2], lines[3]));
        assertThat(get("/job/" + next.id())).as("not finished yet").doesNotContain("your own 1 of these");
        move(first, Stage.TOGETHER);
        for (Job one : new Job[] {next, own}) {
            assertThat(get("/job/" + one.id()))
                    .contains(
                            "Damper lower bolt, left, opening: your own 1 of these",
                            "Damper lower bolt, right, opening: your own 1 of these",
                            "Damper lower bolt, left, seized: your own 1 of these",
                            "heat, takes: your own 1 of these")
                    .doesNotContain("closing: your own");
            assertThat(get("/job/" + one.id() + "/carside.json")).contains("\"ownTries\":{\"heat\":1}");
        }
        assertThat(get("/price?sheet=demo-van&renew=damper&rust=3")).contains("Learnt from your own jobs");
        assertThat(get("/price?sheet=front-strut&renew=strut&rust=3")).doesNotContain("Learnt from your own jobs");
        send(first, LEDGER);
        assertThat(get("/job/" + next.id())).contains("Damper lower bolt, left, closing: your own 1 of these");
        move(first, Stage.UNDER_WAY);
        assertThat(get("/job/" + next.id())).doesNotContain("your own 1 of these");
    }
}
