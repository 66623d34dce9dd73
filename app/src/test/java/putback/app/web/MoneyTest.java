package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import putback.job.Stage;
import putback.store.books.Approval;
import putback.store.books.Approvals;
import putback.store.books.Arrival;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Heights;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.KeptEstimate;
import putback.store.books.KeptEstimates;
import putback.store.books.Saved;
import putback.store.books.Scope;
import putback.store.books.Settings;

/** What a job costs, what the owner is asked, and what he said. */
class MoneyTest {
    private static final String STRUT = "price need left.complete-strut";

    private Lan lan;
    private String owner = "";
    private int told;

    @BeforeEach
    void start() throws Exception {
        lan = new Lan();
        owner = lan.signedIn(Lan.OWNER);
    }

    @AfterEach
    void stop() {
        lan.close();
    }

    private String job(String plate) {
        return lan.books.write(change -> {
            Car car = new Car("", "", plate, "", "Tamsel", "Dory", "", "km", "", "", 0);
            String id = ((Saved.Done<Car>) new Cars(lan.books).save(change, car))
                    .value()
                    .id();
            Arrival arrival = new Arrival("knocks over kerbs", "", "141250", "", Heights.NONE, "");
            Jobs jobs = new Jobs(lan.books);
            Job job = jobs.open(change, id, arrival, "", "Mara");
            jobs.save(change, job.with(new Scope("front-strut", "complete-strut", "left", "", "2")));
            return job.id();
        });
    }

    private void set(String name, String value) {
        lan.books.write(change -> {
            new Settings(lan.books).set(change, name, value);
            return name;
        });
    }

    private String page(String job) throws Exception {
        return lan.get("/job/" + job, owner).body();
    }

    private HttpResponse<String> post(String job, String form, Map<String, String> values) throws Exception {
        return lan.post("/job/" + job + "/" + form, owner, values);
    }

    private String link(String job) throws Exception {
        Matcher link = Pattern.compile("<code id=\"link\">https://[^/]+(/said/[^<]+)<")
                .matcher(post(job, "link", Map.of()).body());
        assertThat(link.find()).isTrue();
        return link.group(1);
    }

    private KeptEstimate last(String job) {
        List<KeptEstimate> all = new KeptEstimates(lan.books).of(job);
        return all.get(all.size() - 1);
    }

    @Test
    void anHourThatIsNobodys_makesNoOffer_andThePageSaysWhatToSet() throws Exception {
        String job = job("WH 1");
        assertThat(page(job))
                .contains("An hour of work is an example here, 60.00", "href=\"/settings\"")
                .contains("No estimate can be put to the owner yet")
                .doesNotContain("/link\"");
        HttpResponse<String> refused = post(job, "link", Map.of());
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("an example is no offer").doesNotContain("/said/");
        assertThat(lan.get("/job/" + job + "/estimate.pdf", owner).statusCode()).isEqualTo(422);
        assertThat(new KeptEstimates(lan.books).of(job)).isEmpty();
    }

    @Test
    void theLinkAsksForAYesUpToWhatFourJobsInFiveStayWithin_andNamesWhatIsAnExampleOrHasNoPrice() throws Exception {
        set("rate", "62.00");
        set("currency", "cr");
        String job = job("WH 2");
        String said = lan.get(link(job), "").body();
        KeptEstimate put = last(job);
        assertThat(put.asked()).isEqualTo(put.fourInFive());
        assertThat(new BigDecimal(put.asked())).isGreaterThan(new BigDecimal(put.likely()));
        assertThat(put.lacking()).isNotEmpty();
        assertThat(said)
                .contains("Yes, up to " + put.asked() + "\u00a0cr", "Complete strut, left (example price)")
                .contains("nobody knows its price yet: " + put.lacking().get(0));
    }

    @Test
    void aCeilingChosenAtTheDesk_isWhatTheOwnerIsAskedFor() throws Exception {
        set("rate", "62.00");
        String job = job("WH 3");
        int version = new Jobs(lan.books).find(job).orElseThrow().version();
        post(job, "terms", Map.of("version", String.valueOf(version), "ceiling", "450"));
        assertThat(lan.get(link(job), "").body()).contains("Yes, up to 450.00");
    }

    @Test
    void afterHisYes_theLinkSaysWhatHeSaid_andWorkStopsOnlyAtWhatHeAgreedTo() throws Exception {
        set("rate", "62.00");
        String job = job("WH 4");
        String link = link(job);
        KeptEstimate put = last(job);
        HttpResponse<String> answer =
                lan.post(link, "", Map.of("estimate", put.id(), "who", "Orla Quent", "yes", "yes"));
        assertThat(answer.body()).contains("The garage sees your yes now").doesNotContain("<form");
        assertThat(lan.get(link, "").body())
                .contains("Orla Quent said yes, up to " + put.asked())
                .doesNotContain("<form");
        Approval said = new Approvals(lan.books).of(job).get(0);
        assertThat(said.upTo()).isEqualTo(put.asked());
        assertThat(said.estimate()).isEqualTo(put.id());
        String page = page(job);
        Matcher stop = Pattern.compile("Stop and call before</th><td class=\"n\">(\\d+) min")
                .matcher(page);
        Matcher likely =
                Pattern.compile("Likely</th><td class=\"n\">(\\d+) min").matcher(page);
        assertThat(stop.find() && likely.find()).isTrue();
        assertThat(Integer.parseInt(stop.group(1))).isGreaterThan(Integer.parseInt(likely.group(1)));
    }

    @Test
    void everyEstimateThatWasPutToTheOwner_staysAsHeSawIt_andHisYesNamesIt() throws Exception {
        set("rate", "62.00");
        String job = job("WH 5");
        String link = link(job);
        KeptEstimate first = last(job);
        post(job, "approval", Map.of("who", "Orla", "how", "on the phone", "up-to", first.asked(), "yes", "yes"));
        set("rate", "91.00");
        assertThat(lan.get(link, "").body()).contains("<form").doesNotContain(first.asked());
        assertThat(last(job).number()).isEqualTo(2);
        assertThat(page(job))
                .contains(
                        "Estimate 1, ",
                        "Estimate 2, ",
                        first.likely(),
                        first.lines().get(0).amount())
                .contains("up to " + first.asked() + " (asked up to " + first.asked() + "), to estimate 1");
    }

    @Test
    void aPriceTypedOnce_isTheGaragesOwn_andIsThereAtTheNextJobOfTheModel() throws Exception {
        set("rate", "62.00");
        String job = job("WH 6");
        assertThat(page(job)).contains("example of the sheet: 168.00", "Example prices of the sheet, not yours");
        post(job, "prices", Map.of(STRUT, "175.50"));
        assertThat(page(job)).doesNotContain("Example prices of the sheet");
        assertThat(lan.get(link(job), "").body())
                .contains("Complete strut, left", "175.50")
                .doesNotContain("example price");
        assertThat(page(job("WH 7")))
                .contains("paid before: 175.50, " + Lan.OWNER)
                .contains("value=\"175.50\"");
    }

    @Test
    void aFluidOfTheGaragesOwn_isInThePrice_andIsOfferedAgain() throws Exception {
        set("rate", "62.00");
        String job = job("WH 8");
        post(job, "prices", Map.of("own", "Rust remover, 0.1 l", "own-count", "2", "own-price", "3.25"));
        link(job);
        assertThat(last(job).lines()).contains(new KeptEstimate.Line("Rust remover, 0.1 l", "2", "each", "6.50"));
        String next = job("WH 9");
        assertThat(page(next)).contains("As the last time on this model: 2 × Rust remover, 0.1 l, 3.25");
    }

    @Test
    void aWrongAmount_leavesEveryWordWhereItWasTyped() throws Exception {
        String job = job("WH 10");
        HttpResponse<String> refused =
                post(job, "finding", Map.of("where", "rear left", "words", "hose cracked", "price", "£40"));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains(
                        "is not an amount of money", "value=\"hose cracked\"", "value=\"rear left\"", "value=\"£40\"");
        Map<String, String> yes = new LinkedHashMap<>(Map.of("who", "Orla", "how", "here", "yes", "yes"));
        yes.put("up-to", "abc");
        yes.put("words", "but by Friday");
        assertThat(post(job, "approval", yes).body()).contains("value=\"but by Friday\"", "value=\"abc\"");
        yes.put("up-to", "");
        assertThat(post(job, "approval", yes).body()).contains("Write down up to how much");
        assertThat(post(job, "prices", Map.of(STRUT, "12 euro", "own", "Grease"))
                        .body())
                .contains("value=\"12 euro\"", "value=\"Grease\"");
        assertThat(new Approvals(lan.books).of(job)).isEmpty();
    }

    @Test
    void whatTheOwnerSaidToADangerousFinding_isAskedForInHisWords() throws Exception {
        String job = job("WH 11");
        post(job, "finding", Map.of("words", "ABS wire rubbed to copper", "urgency", "stop driving"));
        String body = page(job);
        Matcher row = Pattern.compile("/job/" + job + "/(finding/[^\"]+)\"").matcher(body);
        assertThat(row.find()).isTrue();
        assertThat(body).contains("not answered yet");
        Map<String, String> no = new LinkedHashMap<>(Map.of("version", "1", "answer", "declined"));
        assertThat(post(job, row.group(1), no).statusCode()).isEqualTo(422);
        no.put("words", "I fetch it with a trailer");
        assertThat(post(job, row.group(1), no).statusCode()).isEqualTo(303);
        assertThat(page(job)).contains("the owner said no: “I fetch it with a trailer”, written down by " + Lan.OWNER);
    }

    @Test
    void aLinkThatHasEnded_showsTheCustomerNothingOfTheGarage() throws Exception {
        HttpResponse<String> gone = lan.get("/said/nothing-here", "");
        assertThat(gone.statusCode()).isEqualTo(404);
        assertThat(gone.body())
                .contains("This link no longer holds")
                .doesNotContain("search", "Who is working", "href=\"/\"");
    }

    @Test
    void rustIsChosenFixingByFixingOnOnePage_andNoIdIsShown() throws Exception {
        String job = job("WH 12");
        String rust = lan.get("/job/" + job + "/rust", owner).body();
        assertThat(rust).contains("Strut-to-hub bolts", "rust left.strut-to-hub", "4 wasted");
        int version = new Jobs(lan.books).find(job).orElseThrow().version();
        Map<String, String> form = new LinkedHashMap<>(Map.of("version", String.valueOf(version), "rust", "1"));
        form.put("rust left.strut-to-hub", "4");
        assertThat(post(job, "rust", form).statusCode()).isEqualTo(303);
        assertThat(new Jobs(lan.books).find(job).orElseThrow().scope().rust()).isEqualTo("1,left.strut-to-hub=4");
        assertThat(page(job)).contains("Rust: the whole car 1 surface; Strut-to-hub bolts, left 4 wasted");
        form.put("version", String.valueOf(version + 1));
        form.put("rust", "9");
        assertThat(post(job, "rust", form).body()).contains("9 is no grade of rust");
        assertThat(new Jobs(lan.books).find(job).orElseThrow().scope().rust()).isEqualTo("1,left.strut-to-hub=4");
    }

    /** A job at which everything is together and nothing is owed any more. */
    private String together(String plate, String upTo) throws Exception {
        String job = job(plate);
        post(job, "approval", Map.of("who", "Orla", "how", "here", "up-to", upTo, "yes", "yes"));
        lan.books.write(change -> {
            Jobs jobs = new Jobs(lan.books);
            return jobs.move(change, jobs.find(job).orElseThrow(), Stage.TOGETHER, "Mara", "");
        });
        say(job, "carry-1", "\"do\":\"carry\",\"part\":\"left.strut\",\"reason\":\"goes on a trailer\"");
        return job;
    }

    private void say(String job, String id, String what) throws Exception {
        String event = "{\"id\":\"" + id + "\",\"at\":\"2026-11-02T12:00:00Z\",\"by\":\"" + Lan.OWNER
                + "\",\"device\":\"desk\",\"seq\":" + ++told + "," + what + "}\n";
        HttpResponse<String> answer = lan.send(lan.to("/job/" + job + "/events", owner)
                .header("Content-Type", "application/x-ndjson")
                .header("Origin", lan.address())
                .POST(HttpRequest.BodyPublishers.ofString(event))
                .build());
        assertThat(answer.statusCode()).as(answer.body()).isLessThan(300);
    }

    private Job now(String job) {
        return new Jobs(lan.books).find(job).orElseThrow();
    }

    private HttpResponse<String> move(String job) throws Exception {
        return post(job, "move", Map.of("to", "handed over", "version", String.valueOf(now(job).version())));
    }

    private String printed(String job) throws Exception {
        HttpResponse<byte[]> pdf = lan.bytes("/job/" + job + "/handover.pdf", owner);
        assertThat(pdf.statusCode()).isEqualTo(200);
        try (PDDocument paper = Loader.loadPDF(pdf.body())) {
            return new PDFTextStripper().getText(paper);
        }
    }

    @Test
    void theInvoiceOfAHandedOverCar_staysAsItWentWithIt_whateverIsChangedAfterwards() throws Exception {
        set("rate", "62.00");
        set("currency", "cr");
        String job = together("WH 15", "900");
        assertThat(move(job).statusCode()).isEqualTo(303);
        KeptEstimate invoice = new KeptEstimates(lan.books).invoice(job).orElseThrow();
        assertThat(invoice.asked()).isEqualTo("900.00");
        assertThat(invoice.lacking()).isNotEmpty().allMatch(name -> name.endsWith(": without a price"));
        String paper = printed(job);
        assertThat(paper)
                .contains(
                        invoice.likely(), "Not in this total", invoice.lacking().get(0));
        set("rate", "151.00");
        set("tax", "7");
        set("currency", "zz");
        assertThat(printed(job)).isEqualTo(paper);
        assertThat(page(job))
                .contains("Invoice, as it went with the car", invoice.likely() + " cr")
                .doesNotContain("Stop and call before", "Change it", "/terms\"", "/prices\"", "/approval\"", "/link\"");
    }

    @Test
    void theFormsOfAHandedOverJob_changeNothing_andSayWhy() throws Exception {
        set("rate", "62.00");
        String job = together("WH 16", "900");
        String link = link(job);
        move(job);
        assertThat(lan.get(link, "").body())
                .contains("or the car is handed over already")
                .doesNotContain("<form");
        Scope scope = now(job).scope();
        Map<String, String> any = new LinkedHashMap<>();
        any.put("version", String.valueOf(now(job).version()));
        any.putAll(Map.of("rate", "150", "sheet", "front-strut", "renew", "pads", "rust", "3", "who", "Orla"));
        any.putAll(Map.of("how", "here", "up-to", "5000", "yes", "yes", STRUT, "999"));
        for (String form : List.of("terms", "scope", "rust", "prices", "parts", "approval", "link")) {
            HttpResponse<String> refused = post(job, form, any);
            assertThat(refused.statusCode()).as(form).isEqualTo(422);
            assertThat(refused.body()).as(form).contains("the car is handed over and its invoice went with it");
        }
        assertThat(lan.get("/job/" + job + "/estimate.pdf", owner).body()).contains("what was charged");
        assertThat(now(job).scope()).isEqualTo(scope);
        assertThat(new Approvals(lan.books).of(job)).hasSize(1);
    }

    @Test
    void aCarIsNotHandedOver_forMoreThanTheLastYes_evenIfANoCameAfterIt() throws Exception {
        set("rate", "62.00");
        String job = together("WH 17", "120");
        assertThat(move(job).body()).contains("ask again and write down the answer");
        post(job, "approval", Map.of("who", "Orla", "how", "here", "yes", "no"));
        assertThat(move(job).body()).contains("ask again and write down the answer");
        assertThat(new KeptEstimates(lan.books).invoice(job)).isEmpty();
        post(job, "approval", Map.of("who", "Orla", "how", "here", "up-to", "900", "yes", "yes"));
        assertThat(move(job).statusCode()).isEqualTo(303);
    }

    @Test
    void whatBrokeAndWentOnNewOnceMore_isNamedOnTheInvoice() throws Exception {
        set("rate", "62.00");
        String job = together("WH 18", "900");
        say(job, "broke-1", "\"do\":\"break\",\"part\":\"left.strut\",\"reason\":\"thread stripped\"");
        say(job, "new-1", "\"do\":\"renew\",\"part\":\"left.strut\"");
        move(job);
        assertThat(printed(job)).contains("Strut, left: a new one once more, for one that broke");
    }

    @Test
    void whoChangedAPrice_standsInTheHistory() throws Exception {
        String job = job("WH 19");
        post(job, "prices", Map.of(STRUT, "175.50", "own", "Grease", "own-price", "3"));
        assertThat(page(job))
                .contains("price of one: Complete strut, left, none to 175.50")
                .contains("price of one: Grease, none to 3.00");
    }

    @Test
    void theHistorySaysWhatIsRenewed_inWords() throws Exception {
        String job = job("WH 13");
        int version = new Jobs(lan.books).find(job).orElseThrow().version();
        Map<String, String> terms = Map.of("version", String.valueOf(version), "rate", "70", "subcontracted", "35");
        post(job, "terms", terms);
        assertThat(page(job))
                .contains("the work and its terms: Complete strut, left; rust: the whole car 2 scaled")
                .contains("work of others 35")
                .doesNotContain("<li>scope", "complete-strut (left)");
    }

    @Test
    void thePriceInFull_hasTheGaragesPrices_andFoldsWhatSavesLittle() throws Exception {
        set("rate", "62.00");
        String job = job("WH 14");
        post(job, "prices", Map.of(STRUT, "175.50"));
        Matcher address = Pattern.compile("href=\"([^\"]+)\">The price in full").matcher(page(job));
        assertThat(address.find()).isTrue();
        String full = lan.get(address.group(1).replace("&amp;", "&"), owner).body();
        assertThat(full).contains("an hour at 62.00", "175.50").doesNotContain("(example price)", "(example rate)");
        String worth = full.substring(full.indexOf("<h2>Alongside"), full.indexOf("that could be renewed as well"));
        assertThat(worth)
                .contains("Track-rod end, left", "Anti-roll-bar link, left")
                .doesNotContain("Scuttle trim");
        assertThat(full).contains("Scuttle trim");
    }

    @Test
    void aPriceForNoJob_saysThatItsFiguresAreExamples() throws Exception {
        String full = lan.get("/price?sheet=front-strut&renew=complete-strut&side=left", owner)
                .body();
        assertThat(full).contains("Complete strut, left (example price)", "(example rate)", "hour is an example");
    }

    @Test
    void theInventedCarsOfTheDemonstration_areNotOfferedInARealGarage() throws Exception {
        assertThat(lan.get("/sheets", owner).body()).contains("front-strut").doesNotContain("demo-van");
        assertThat(lan.get("/new-car", owner).body()).doesNotContain("Tamsel");
        set("invented", "yes");
        assertThat(lan.get("/sheets", owner).body()).contains("demo-van");
    }
}
