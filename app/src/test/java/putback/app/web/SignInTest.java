package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import putback.app.web.door.SigningIn;
import putback.store.books.Audit;
import putback.store.books.People;

/** Who gets in when the pages are served to a network. */
class SignInTest {
    private Lan lan;

    @BeforeEach
    void start() throws Exception {
        lan = new Lan();
    }

    @AfterEach
    void stop() {
        lan.close();
    }

    @Test
    void everyRoute_wantsSomebodySignedIn() throws Exception {
        List<String> open = new ArrayList<>();
        int closed = 0;
        for (String route : lan.server.routes()) {
            String method = route.substring(0, route.indexOf(' '));
            String path = route.substring(route.indexOf(' ') + 1).replaceAll("\\{[^}]*}", "x");
            if (!method.equals("GET") && !method.equals("POST")) {
                continue;
            }
            HttpResponse<String> answer =
                    method.equals("GET") ? lan.get(path, "") : lan.post(path, "", Map.of("name", "x"));
            boolean turnedAway = answer.statusCode() == 401
                    || (answer.statusCode() == 303
                            && answer.headers()
                                    .firstValue("Location")
                                    .orElse("")
                                    .contains("/sign-in"));
            if (turnedAway && !path.equals("/sign-in")) {
                closed++;
            } else {
                open.add(route);
            }
        }
        assertThat(closed).isGreaterThan(40);
        assertThat(open)
                .containsExactlyInAnyOrder(
                        "GET /sign-in",
                        "POST /sign-in",
                        "GET /pair/{code}",
                        "POST /pair/{code}",
                        "GET /said/{token}",
                        "POST /said/{token}",
                        "GET /trust",
                        "GET /authority.crt",
                        "GET /page.css",
                        "GET /page.js",
                        "GET /typed.js",
                        "GET /mark.svg");
    }

    @Test
    void aPageThatIsNot_isNotToldApartWithoutSigningIn() throws Exception {
        for (String path :
                List.of("/no-such-page", "//settings", "/settings/", "/%73ettings", "/said/x/../../settings")) {
            HttpResponse<String> answer = lan.get(path, "");
            assertThat(answer.statusCode()).as(path).isIn(303, 400);
            assertThat(answer.body()).doesNotContain("Tax");
        }
    }

    @Test
    void anOwner_opensAll_aMechanic_notWhatIsTheOwners() throws Exception {
        String owner = lan.signedIn(Lan.OWNER);
        String mechanic = lan.signedIn(Lan.MECHANIC);
        for (String path : List.of("/settings", "/people", "/devices", "/audit")) {
            assertThat(lan.get(path, owner).statusCode()).isEqualTo(200);
            assertThat(lan.get(path, mechanic).statusCode()).isEqualTo(403);
            assertThat(lan.get(path + "/", mechanic).statusCode()).isEqualTo(403);
        }
        assertThat(lan.post("/people", mechanic, Map.of("name", "Eve", "role", "owner", "password", "123456789"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(lan.get("/", mechanic).body()).contains(Lan.MECHANIC, "Sign out");
        assertThat(new People(lan.books).named("Eve")).isEmpty();
    }

    @Test
    void theSession_isAnUnguessableCookieForHttpsAlone() throws Exception {
        HttpResponse<String> answer = lan.tries(Lan.OWNER.toUpperCase(java.util.Locale.ROOT), Lan.PASSWORD);
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Set-Cookie").orElse(""))
                .matches("__Host-putback=[A-Za-z0-9_-]{43}; Path=/; Max-Age=43200; HttpOnly; SameSite=Strict; Secure");
    }

    @Test
    void aSessionThatWasPlanted_isNotTakenOver() throws Exception {
        String planted = "__Host-putback=planted";
        HttpResponse<String> answer =
                lan.post("/sign-in", planted, Map.of("name", Lan.OWNER, "password", Lan.PASSWORD));
        assertThat(Lan.session(answer)).isNotEmpty().isNotEqualTo(planted);
        assertThat(lan.get("/", planted).statusCode()).isEqualTo(303);
        String first = Lan.session(answer);
        String second =
                Lan.session(lan.post("/sign-in", first, Map.of("name", Lan.MECHANIC, "password", Lan.PASSWORD)));
        assertThat(lan.get("/", first).statusCode()).isEqualTo(303);
        assertThat(lan.get("/", second).statusCode()).isEqualTo(200);
    }

    @Test
    void aSession_endsAfterTwelveHours_andOnSigningOut() throws Exception {
        String cookie = lan.signedIn(Lan.OWNER);
        lan.clock.forward(Duration.ofHours(11));
        assertThat(lan.get("/", cookie).statusCode()).isEqualTo(200);
        lan.clock.forward(Duration.ofHours(1));
        assertThat(lan.get("/", cookie).statusCode()).isEqualTo(303);
        String other = lan.signedIn(Lan.OWNER);
        lan.post("/sign-out", other, Map.of());
        assertThat(lan.get("/", other).statusCode()).isEqualTo(303);
    }

    @Test
    void anUnknownName_aWrongPassword_andOneWhoLeft_areAnsweredAlike() throws Exception {
        String id = new People(lan.books).named(Lan.MECHANIC).orElseThrow().id();
        lan.books.write(change -> {
            new People(lan.books).leave(change, id);
            return id;
        });
        HttpResponse<String> wrong = lan.tries(Lan.OWNER, "not the password");
        HttpResponse<String> unknown = lan.tries("Nobody Here", "not the password");
        HttpResponse<String> left = lan.tries(Lan.MECHANIC, Lan.PASSWORD);
        assertThat(wrong.statusCode()).isEqualTo(401);
        assertThat(unknown.statusCode()).isEqualTo(401);
        assertThat(left.statusCode()).isEqualTo(401);
        assertThat(unknown.body()).isEqualTo(wrong.body());
        assertThat(left.body()).isEqualTo(wrong.body());
    }

    @Test
    void tenThousandTries_areTurnedAwayQuickly_andTheRightPasswordWithThem() throws Exception {
        for (int i = 0; i < 5; i++) {
            assertThat(lan.tries(Lan.OWNER, "guess " + i).statusCode()).isEqualTo(401);
        }
        long start = System.nanoTime();
        for (int i = 0; i < 10_000; i++) {
            assertThat(lan.tries(i % 2 == 0 ? Lan.OWNER : "Name " + i, "guess").statusCode())
                    .isEqualTo(429);
        }
        double each = (System.nanoTime() - start) / 1e6 / 10_000;
        assertThat(each).as("ms for each try; a hash takes tens").isLessThan(10);
        assertThat(lan.tries(Lan.OWNER, Lan.PASSWORD).statusCode()).isEqualTo(429);
        lan.clock.forward(Duration.ofMinutes(1));
        assertThat(lan.tries(Lan.OWNER, Lan.PASSWORD).statusCode()).isEqualTo(303);
    }

    @Test
    void aPhone_isPairedOnce_andStaysForThirtyDays_untilItIsEnded() throws Exception {
        String owner = lan.signedIn(Lan.OWNER);
        String code = code(owner);
        Map<String, String> form = Map.of("device", "phone <1>", "name", Lan.MECHANIC, "password", Lan.PASSWORD);
        HttpResponse<String> paired = lan.post(code, "", form);
        String phone = Lan.session(paired);
        assertThat(paired.headers().allValues("Set-Cookie")).anyMatch(cookie -> cookie.contains("Max-Age=2592000"));
        assertThat(lan.post(code, "", form).statusCode()).isEqualTo(404);
        String page = lan.get("/devices", owner).body();
        assertThat(page).contains("phone &lt;1&gt;").doesNotContain("phone <1>");
        lan.clock.forward(Duration.ofDays(29));
        assertThat(lan.get("/", phone).statusCode()).isEqualTo(200);
        owner = lan.signedIn(Lan.OWNER);
        lan.post(found("action=\"(/devices/[^\"]+/end)\"", page), owner, Map.of());
        assertThat(lan.get("/", phone).statusCode()).isEqualTo(303);
        assertThat(new Audit(lan.books).latest(9))
                .extracting(Audit.Entry::what)
                .contains("device paired", "device ended");
    }

    @Test
    void aPairedPhone_isKnownAgain_afterSigningOut() throws Exception {
        String code = code(lan.signedIn(Lan.OWNER));
        HttpResponse<String> paired = lan.post(code, "", Map.of("name", Lan.MECHANIC, "password", Lan.PASSWORD));
        String device = Lan.cookie(paired, SigningIn.DEVICE);
        HttpResponse<String> again =
                lan.post("/sign-in", device, Map.of("name", Lan.MECHANIC, "password", Lan.PASSWORD));
        assertThat(again.headers().firstValue("Set-Cookie").orElse("")).contains("Max-Age=2592000");
    }

    @Test
    void aCode_endsAfterTenMinutes_andDoesNotReplaceThePassword() throws Exception {
        String owner = lan.signedIn(Lan.OWNER);
        String code = code(owner);
        HttpResponse<String> wrong = lan.post(code, "", Map.of("name", Lan.MECHANIC, "password", "not this one"));
        assertThat(wrong.statusCode()).isEqualTo(401);
        assertThat(lan.get(code, "").statusCode()).isEqualTo(200);
        lan.clock.forward(Duration.ofMinutes(10));
        assertThat(lan.get(code, "").statusCode()).isEqualTo(404);
    }

    private String code(String owner) throws Exception {
        String body = lan.post("/devices", owner, Map.of()).body();
        assertThat(body).contains("<svg");
        return found("(/pair/[A-Za-z0-9_-]{22})<", body);
    }

    private static String found(String pattern, String page) {
        Matcher matcher = Pattern.compile(pattern).matcher(page);
        assertThat(matcher.find()).as(pattern).isTrue();
        return matcher.group(1);
    }

    @Test
    void anOwner_addsPeople_andTheLastOwnerStays() throws Exception {
        String owner = lan.signedIn(Lan.OWNER);
        assertThat(lan.post("/people", owner, Map.of("name", "Mia Holt", "role", "mechanic", "password", "short"))
                        .statusCode())
                .isEqualTo(422);
        lan.post("/people", owner, Map.of("name", "Mia Holt", "role", "mechanic", "password", Lan.PASSWORD));
        String mia = lan.signedIn("mia holt");
        assertThat(lan.get("/", mia).statusCode()).isEqualTo(200);
        String id = new People(lan.books).named("Mia Holt").orElseThrow().id();
        lan.post("/people/" + id + "/leave", owner, Map.of());
        assertThat(lan.get("/", mia).statusCode()).isEqualTo(303);
        String last = new People(lan.books).named(Lan.OWNER).orElseThrow().id();
        assertThat(lan.post("/people/" + last + "/leave", owner, Map.of()).statusCode())
                .isEqualTo(422);
        assertThat(lan.get("/", owner).statusCode()).isEqualTo(200);
    }

    @Test
    void anotherPassword_endsTheSessionsOfTheOldOne() throws Exception {
        String owner = lan.signedIn(Lan.OWNER);
        String tom = lan.signedIn(Lan.MECHANIC);
        String id = new People(lan.books).named(Lan.MECHANIC).orElseThrow().id();
        lan.post("/people/" + id + "/password", owner, Map.of("password", "another long one"));
        assertThat(lan.get("/", tom).statusCode()).isEqualTo(303);
        assertThat(lan.tries(Lan.MECHANIC, "another long one").statusCode()).isEqualTo(303);
    }

    @Test
    void signingIn_leadsToThePageThatWasAskedFor_neverElsewhere() throws Exception {
        assertThat(lan.get("/job/x?a=1", "").headers().firstValue("Location").orElse(""))
                .endsWith("/sign-in?to=%2Fjob%2Fx%3Fa%3D1");
        for (String to : List.of("https://elsewhere.example/x", "//elsewhere.example/x", "/\\\\elsewhere.example")) {
            HttpResponse<String> answer =
                    lan.post("/sign-in", "", Map.of("name", Lan.OWNER, "password", Lan.PASSWORD, "to", to));
            assertThat(answer.headers().firstValue("Location").orElse("")).doesNotContain("elsewhere");
        }
    }

    @Test
    void withoutHttps_onlyThePageAboutTrustIsShown() throws Exception {
        HttpClient plain = HttpClient.newHttpClient();
        URI trust = URI.create(lan.server.trustAddress());
        HttpResponse<String> page = plain.send(HttpRequest.newBuilder(trust).build(), BodyHandlers.ofString());
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains(lan.identity.fingerprint(), "Android", "iPhone");
        HttpResponse<byte[]> certificate = plain.send(
                HttpRequest.newBuilder(trust.resolve("/authority.crt")).build(), BodyHandlers.ofByteArray());
        assertThat(certificate.body()).isEqualTo(lan.identity.certificate());
        for (String path : List.of("/", "/sign-in", "/settings", "/said/x")) {
            HttpResponse<String> answer =
                    plain.send(HttpRequest.newBuilder(trust.resolve(path)).build(), BodyHandlers.ofString());
            assertThat(answer.statusCode()).as(path).isEqualTo(403);
        }
    }
}
