package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import putback.store.books.Cars;
import putback.store.books.JobLines;
import putback.store.books.Links;

/** What somebody writes into any field stays text on every page. */
class StoredMarkupTest {
    private static final String MARKUP = "\"'><script>alert(1)</script><img src=x onerror=alert(2)> ${7*7}";

    private Lan lan;
    private String owner = "";

    @BeforeEach
    void start() throws Exception {
        lan = new Lan();
        owner = lan.signedIn(Lan.OWNER);
    }

    @AfterEach
    void stop() {
        lan.close();
    }

    /** Sends every form of a page, but those that would end the work. */
    private int sendAll(String path) throws Exception {
        int sent = 0;
        for (Forms form : Forms.of(lan.get(path, owner).body(), MARKUP)) {
            if (form.action().equals("/sign-out") || form.action().matches(".*/(leave|password|end)")) {
                continue;
            }
            HttpResponse<String> answer = lan.post(form.action(), owner, form.fields());
            assertThat(answer.statusCode()).as(form.toString()).isIn(200, 303, 404, 409, 422);
            plain(form.action(), answer.body());
            sent++;
        }
        return sent;
    }

    private static void plain(String where, String body) {
        assertThat(body).as(where).doesNotContain("<script>alert", "<img src=x", "\"'>");
    }

    @Test
    void markupInEveryFieldOfEveryForm_isShownAsText() throws Exception {
        sendAll("/car");
        String car = new Cars(lan.books).search("script", 9).get(0).id();
        sendAll("/car/" + car);
        String job = new JobLines(lan.books).ofCar(car).get(0).id();
        int sent = sendAll("/job/" + job)
                + sendAll("/job/" + job)
                + sendAll("/settings")
                + sendAll("/people")
                + sendAll("/devices");
        sent += sendAll("/new-car") + sendAll("/car/" + car + "/card");
        assertThat(sent).isGreaterThan(12);
        String token = link(job);
        sendAll(token);
        Set<String> shown = new TreeSet<>();
        for (String route : lan.server.routes()) {
            if (!route.startsWith("GET ") || route.endsWith(".pdf")) {
                continue;
            }
            String path = route.substring(4).replace("/job/{id}", "/job/" + job).replace("/car/{id}", "/car/" + car);
            HttpResponse<String> answer =
                    lan.get(path.equals("/said/{token}") ? token : path.replaceAll("[{}]", ""), owner);
            if (answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
                plain(path, answer.body());
                if (answer.body().contains("&lt;script")) {
                    shown.add(route.substring(4));
                }
            }
        }
        assertThat(shown).contains("/", "/audit", "/settings", "/car/{id}", "/job/{id}", "/people");
        plain(
                "search",
                lan.get("/search?q=%22%27%3E%3Cscript%3Ealert(1)", owner).body());
    }

    private String link(String job) {
        return "/said/" + lan.books.write(change -> new Links(lan.books).make(change, job, Duration.ofDays(14)));
    }

    @Test
    void noTemplate_hasScriptOrHandlersOfItsOwn() throws Exception {
        List<String> faults = new ArrayList<>();
        for (String path :
                List.of("/", "/car", "/sheets", "/tightening", "/angles", "/corner", "/settings", "/new-car")) {
            String body = lan.get(path, owner).body();
            if (body.matches("(?s).*<script(?![^>]* src=)[^>]*>.*") || body.matches("(?is).*<[^>]+\\son[a-z]+=.*")) {
                faults.add(path);
            }
        }
        assertThat(faults).isEmpty();
    }
}
