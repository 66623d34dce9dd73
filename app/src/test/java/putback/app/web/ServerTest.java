package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the server answers, without a browser. */
class ServerTest {
    private static Server server;
    private final HttpClient client = HttpClient.newHttpClient();

    @BeforeAll
    static void start() {
        server = Server.start(0);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(server.address() + path)).build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void aPage_isUtf8_andMayLoadNothingFromElsewhere() throws Exception {
        HttpResponse<String> page = get("/plan?sheet=front-strut&renew=link&side=left");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.headers().firstValue("content-type")).hasValue("text/html;charset=utf-8");
        assertThat(page.headers().firstValue("content-security-policy").orElse(""))
                .contains("default-src 'self'");
        assertThat(page.body()).contains("N·m").doesNotContain("<script>");
    }

    @Test
    void unknownThings_areToldInWords() throws Exception {
        assertThat(get("/plan?sheet=nothing&renew=x").statusCode()).isEqualTo(404);
        assertThat(get("/sheet/nothing").statusCode()).isEqualTo(404);
        assertThat(get("/nowhere").statusCode()).isEqualTo(404);
        HttpResponse<String> mistyped = get("/plan?sheet=front-strut&renew=sprut");
        assertThat(mistyped.statusCode()).isEqualTo(400);
        assertThat(mistyped.body()).contains("maybe strut");
        assertThat(get("/plan?sheet=front-strut").statusCode()).isEqualTo(400);
    }

    @Test
    void aNameWithMarkup_isShownAsText() throws Exception {
        HttpResponse<String> page = get("/plan?sheet=front-strut&renew=%3Cscript%3Ealert(1)%3C/script%3E");
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.body()).doesNotContain("<script>alert").contains("&lt;script&gt;");
    }

    @Test
    void anotherNameForThisMachine_isRefused() throws Exception {
        int port = URI.create(server.address()).getPort();
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.getOutputStream()
                    .write("GET / HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"
                            .getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 403").doesNotContain("<html");
        }
    }

    @Test
    void theSamePlan_comesAsPictureAndForPrograms() throws Exception {
        HttpResponse<String> svg = get("/plan.svg?sheet=front-brake&renew=disc&side=both");
        assertThat(svg.headers().firstValue("content-type")).hasValue("image/svg+xml; charset=utf-8");
        assertThat(svg.body()).startsWith("<svg ");
        HttpResponse<String> json = get("/plan.json?sheet=front-brake&renew=disc&side=both");
        assertThat(json.body()).startsWith("{").contains("\"proven\"");
    }
}
