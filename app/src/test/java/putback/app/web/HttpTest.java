package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Question;
import putback.app.web.planning.PlanView;
import putback.app.web.planning.StepView;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.Wanted;
import putback.plan.selection.WantedNames;
import putback.sheet.Assembly;
import putback.sheet.Side;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

class HttpTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static Server server;

    @BeforeAll
    static void start() {
        server = Server.start(0);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    private static HttpResponse<String> get(String page) throws IOException, InterruptedException {
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create(server.address() + "/" + page))
                        .build(),
                BodyHandlers.ofString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sheet/no-such-sheet|404|There is no sheet called",
                "sheet/..%2Fpom|404|There is no sheet called",
                "plan?sheet=no-such-sheet&renew=spring|404|There is no sheet called",
                "plan?sheet=/etc/passwd&renew=spring|404|There is no sheet called",
                "plan?renew=spring|404|There is no sheet called",
                "no-such-page|404|nothing at this address",
                "plan?sheet=demo-van&renew=sprng|400|maybe spring",
                "plan?sheet=demo-van|400|Tick at least one",
                "plan?sheet=demo-van&renew=spring&side=up|400|left, right or both",
                "plan?sheet=demo-van&renew=spring&side=left&side=right|400|gives side more than once",
                "plan.json?sheet=demo-van&renew=spring&side=left&side=left|400|gives side more than once",
                "plan-part?sheet=demo-van&sheet=front-strut&renew=spring|400|gives sheet more than once",
                "sheet/demo-van?side=left&side=right|400|gives side more than once",
                "plan?sheet=demo-van&renew=left.spring&side=right|400|not on the side that is asked for",
                "plan?sheet=demo-van&renew=%3Cscript%3E|400|&lt;script&gt;",
                "plan.svg?sheet=demo-van&renew=sprng|400|maybe spring",
                "plan.json?sheet=demo-van&renew=sprng|400|maybe spring",
                "plan-part?sheet=demo-van&renew=sprng|400|maybe spring",
                "price?sheet=demo-van&renew=spring&rate=0|422|rate is an amount of money such as 60.00, 0.01 to",
                "price?sheet=demo-van&renew=spring&ceiling=1.001|422|more than 2 decimals",
                "price?sheet=demo-van&renew=spring&markup=1001|422|markup is a number of percent, 0 to 1000",
                "price?sheet=demo-van&renew=spring&hands=10|422|hands is a whole number of people, 1 to 9",
                "price?sheet=demo-van&renew=spring&rust=5|422|is not a grade",
                "price?sheet=demo-van&renew=spring&rust.left.wheel-nuts=x|422|is not a grade",
                "price?sheet=demo-van&renew=spring&tax-on=%3Cscript%3E|422|&lt;script&gt;",
                "price-part?sheet=demo-van&renew=spring&rate=0|200|rate is an amount of money",
            })
    void whatIsNotThere_isSaidPlainly(String page, int status, String said) throws Exception {
        HttpResponse<String> answer = get(page);
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.body()).contains(said).doesNotContain("Exception", "\tat ", "<script>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "sheet/demo-van", "plan?sheet=demo-van&renew=pads&side=left", "no-such-page"})
    void everyPage_hasItsHeaders(String page) throws Exception {
        HttpResponse<String> answer = get(page);
        assertThat(header(answer, "Content-Type")).matches("text/html; ?charset=utf-8");
        assertThat(header(answer, "Content-Security-Policy"))
                .startsWith("default-src 'self'; style-src 'self' 'unsafe-inline'");
        assertThat(header(answer, "X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(header(answer, "Referrer-Policy")).isEqualTo("same-origin");
        assertThat(answer.body()).contains("<html lang=\"en\">").doesNotContain("http://127", "onclick", "style=");
    }

    private static String header(HttpResponse<String> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    @Test
    void plan_hasStepsToolsPartsAndBothUnits() throws Exception {
        HttpResponse<String> answer = get("plan?sheet=demo-van&renew=spring,damper&renew=pads&side=both");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .contains("Rear coil spring, left and right", "Apart</h2>", "Together</h2>", "Tools</h2>", "Parts</h2>")
                .contains("proven", "110 N·m (81 lbf·ft)", "snug", "<summary>Why");
    }

    @Test
    void otherPrograms_getThePlanAsJsonAndSvg() throws Exception {
        HttpResponse<String> json = get("plan.json?sheet=demo-van&renew=pads");
        assertThat(header(json, "Content-Type")).startsWith("application/json");
        assertThat(json.body()).startsWith("{");
        HttpResponse<String> svg = get("plan.svg?sheet=demo-van&renew=pads");
        assertThat(header(svg, "Content-Type")).startsWith("image/svg+xml");
        assertThat(svg.body()).startsWith("<svg");
    }

    @Test
    void unknownTorque_isSaidAndNotGuessed(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("one.yaml"), """
                sheet: one
                title: One cover
                parts: {cover: {}}
                joints:
                  cover-bolt: {joins: [cover, body], kind: bolt}
                """);
        Assembly assembly = ((Read.Sheet) SheetReader.read(file)).assembly();
        Wanted wanted = ((WantedNames.Understood.Clear)
                        WantedNames.understand(assembly, List.of("cover"), Set.of(Side.LEFT, Side.RIGHT)))
                .wanted();
        Plan plan = ((Planned.Sound) Planner.plan(assembly, wanted)).plan();
        List<StepView> together = PlanView.of(new Question("one", List.of("cover"), "both"), plan, null)
                .together();
        assertThat(together).extracting(StepView::torque).contains("torque not known");
    }

    @Test
    void locked_is422WithItsSentence() {
        Answer.Refused refused = Answer.locked("There is no sound order: each is behind the other.");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines()).containsExactly("There is no sound order: each is behind the other.");
    }

    @Test
    void takenPort_isSaid() {
        int port = URI.create(server.address()).getPort();
        assertThatThrownBy(() -> Server.start(port))
                .isInstanceOf(JavalinBindException.class)
                .hasMessageContaining("in use");
    }
}
