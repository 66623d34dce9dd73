package putback.app.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.labour.price.Money;
import putback.quantity.Parsed;
import putback.store.books.Approval;
import putback.store.books.Approvals;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.Finding;
import putback.store.books.Findings;
import putback.store.books.KeptEstimate;
import putback.store.books.KeptEstimates;
import putback.store.books.Links;
import putback.store.books.Recheck;
import putback.store.books.Rechecks;
import putback.store.books.RoadTests;
import putback.store.books.Saved;
import putback.store.books.Settings;

/** What is written down on a job's page: words of the owner, findings, parts, road tests, rechecks. */
public final class AskPages implements PageGroup {
    private static final Set<String> URGENCIES = Set.of("stop driving", "soon", "watch");
    private static final Duration LINK_HOLDS = Duration.ofDays(14);

    private final Replies replies;
    private final Books books;
    private final Shelf shelf;
    private final JobShown shown;

    public AskPages(Replies replies, Books books, Shelf shelf, Ledgers ledgers) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
        shown = new JobShown(replies, books, shelf, ledgers);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post("/job/{id}/approval", context -> write(context, this::approval));
        routes.post("/job/{id}/finding", context -> write(context, this::finding));
        routes.post("/job/{id}/finding/{row}", context -> write(context, this::answer));
        routes.post("/job/{id}/road-test", context -> write(context, this::roadTest));
        routes.post("/job/{id}/recheck", context -> write(context, this::recheck));
        routes.post("/job/{id}/recheck/{row}", context -> write(context, this::rechecked));
        routes.post("/job/{id}/link", context -> write(context, this::link));
    }

    /** One thing that is written down. */
    private record Entry(Context context, JobFile file, Form form) {}

    /** Writes it down. */
    private interface Writing {
        /** Why it was not; empty when it was; null when the answer was given already. */
        String write(Entry entry);
    }

    private void write(Context context, Writing writing) {
        String id = context.pathParam("id");
        JobFile file = JobFile.open(books, id);
        if (file == null) {
            replies.missing(context, "job", id);
            return;
        }
        Form form = Form.of(context);
        String fault = form.fault().isEmpty() ? writing.write(new Entry(context, file, form)) : form.fault();
        if (fault.equals(OVERTAKEN)) {
            replies.overtaken(context, "/job/" + id, form);
        } else if (!fault.isEmpty()) {
            shown.refuse(context, file, "Not kept yet: " + fault, new Typed(form(context), form.values()));
        } else if (context.attribute(Replies.TOLD) == null) {
            context.redirect("/job/" + id + form.text("place"), HttpStatus.SEE_OTHER);
        }
    }

    private static final String OVERTAKEN = "overtaken";

    /** Which form of the page it was: what stands behind the job's id. */
    private static String form(Context context) {
        String path = context.path();
        return path.substring(path.indexOf('/', "/job/".length()) + 1);
    }

    private String approval(Entry entry) {
        Form form = entry.form();
        boolean yes = !form.text("yes").equals("no");
        String upTo = yes ? money(form.text("up-to")) : "";
        if (!entry.file().closed().isEmpty()) {
            return entry.file().closed() + ".";
        }
        if (form.text("who").isEmpty() || form.text("how").isEmpty()) {
            return "Write down who said it and how: on the phone, here, in writing.";
        }
        if (upTo.equals("?")) {
            return "\"" + form.text("up-to") + "\" is not an amount of money, such as 420 or 420.00.";
        }
        if (yes && upTo.isEmpty()) {
            return "Write down up to how much they said yes: above it they are asked again.";
        }
        Map<String, String> settings = new Settings(books).all();
        Quoting quoting = Quoting.of(entry.file(), shelf, settings);
        KeptEstimate put = quoting.put(entry.file(), PaperPages.text(settings, "currency"), form.who());
        books.write(change -> {
            KeptEstimate kept = put == null ? null : new KeptEstimates(books).keep(change, put);
            Approval said = new Approvals(books)
                    .add(
                            change,
                            new Approval(
                                    "",
                                    entry.file().job().id(),
                                    form.text("who"),
                                    form.text("how"),
                                    "",
                                    yes,
                                    upTo,
                                    JobPages.total(quoting.asked()),
                                    form.text("words"),
                                    form.who(),
                                    kept == null ? "" : kept.id()));
            new Audit(books)
                    .add(
                            change,
                            form.who(),
                            said.job(),
                            yes ? "said yes" : "said no",
                            said.who() + ", " + said.how() + (upTo.isEmpty() ? "" : ", up to " + upTo)
                                    + (kept == null ? "" : ", to estimate " + kept.number()));
            return said;
        });
        return "";
    }

    /** To the hundredth; empty for nothing, a question mark for what is no money. */
    public static String money(String typed) {
        String text = typed.replace(',', '.');
        return text.isEmpty()
                ? ""
                : text.matches("\\d{1,7}(\\.\\d{1,2})?")
                        ? Money.rounded(new java.math.BigDecimal(text)).toPlainString()
                        : "?";
    }

    private String finding(Entry entry) {
        Form form = entry.form();
        String price = money(form.text("price"));
        if (form.text("words").isEmpty() || price.equals("?")) {
            return form.text("words").isEmpty()
                    ? "Write down what was found, as it is to stand on the paper."
                    : "\"" + form.text("price") + "\" is not an amount of money.";
        }
        Finding found = Finding.seen(
                entry.file().job().id(),
                form.text("where"),
                form.text("words"),
                form.oneOf("urgency", URGENCIES, "watch"),
                price,
                form.who());
        books.write(change -> new Findings(books).add(change, found));
        return "";
    }

    private String answer(Entry entry) {
        Form form = entry.form();
        String row = entry.context().pathParam("row");
        for (Finding found : entry.file().findings()) {
            if (found.id().equals(row)) {
                String answer = form.oneOf("answer", Set.of("agreed", "declined", "open"), "open");
                if (answer.equals("declined")
                        && found.stopsDriving()
                        && form.text("words").isEmpty()) {
                    return "Write down what the owner said to it, in his words: the car is not safe with it, and the"
                            + " words are what shows that he was told.";
                }
                Finding seen = found.at(form.number("version"));
                Saved<Finding> saved = books.write(change -> {
                    new Audit(books).add(change, form.who(), found.job(), "finding " + answer, found.words());
                    return new Findings(books).answer(change, seen, answer, form.text("words"), form.who());
                });
                return saved instanceof Saved.Done ? "" : OVERTAKEN;
            }
        }
        return "There is no such finding on this job.";
    }

    private String roadTest(Entry entry) {
        Form form = entry.form();
        if (form.text("found").isEmpty()) {
            return "Write down what the drive showed.";
        }
        String conditions =
                form.text("conditions").isEmpty() ? entry.file().job().arrival().conditions() : form.text("conditions");
        String moment = form.oneOf("moment", Set.of("before", "after"), "before");
        books.write(change -> new RoadTests(books)
                .add(change, entry.file().job().id(), moment, conditions, form.text("found"), form.who()));
        return "";
    }

    private String recheck(Entry entry) {
        Form form = entry.form();
        Parsed<RecheckForm> read = RecheckForm.booked(form, entry.file().job().arrival(), LocalDate.now(books.clock()));
        if (!(read instanceof Parsed.Value<RecheckForm> booked)) {
            return read.refusal() + ".";
        }
        String what = form.text("what").isEmpty() ? "wheel fasteners" : form.text("what");
        books.write(change -> new Rechecks(books)
                .add(
                        change,
                        entry.file().job().id(),
                        booked.value().due(),
                        booked.value().distance(),
                        what));
        return "";
    }

    private String rechecked(Entry entry) {
        Form form = entry.form();
        String row = entry.context().pathParam("row");
        Parsed<RecheckForm> read = RecheckForm.done(form, entry.file().job().arrival());
        if (!(read instanceof Parsed.Value<RecheckForm> done)) {
            return read.refusal() + ".";
        }
        for (Recheck recheck : entry.file().rechecks()) {
            if (recheck.id().equals(row)) {
                Recheck seen = recheck.at(form.number("version"));
                Saved<Recheck> saved = books.write(change ->
                        new Rechecks(books).done(change, seen, done.value().distance(), form.who(), form.text("seen")));
                return saved instanceof Saved.Done ? "" : OVERTAKEN;
            }
        }
        return "There is no such recheck on this job.";
    }

    private String link(Entry entry) {
        JobFile file = entry.file();
        if (!file.closed().isEmpty()) {
            return file.closed() + ".";
        }
        Map<String, String> settings = new Settings(books).all();
        Quoting quoting = Quoting.of(file, shelf, settings);
        KeptEstimate put = quoting.put(
                file, PaperPages.text(settings, "currency"), entry.form().who());
        if (put == null) {
            return quoting.notToBeOffered();
        }
        String token = books.write(change -> {
            KeptEstimate kept = new KeptEstimates(books).keep(change, put);
            new Audit(books)
                    .add(
                            change,
                            entry.form().who(),
                            kept.job(),
                            "link made",
                            "to estimate " + kept.number() + ", holds " + LINK_HOLDS.toDays() + " days");
            return new Links(books).make(change, kept.job(), LINK_HOLDS);
        });
        entry.context().attribute(Replies.TOLD, true);
        Context context = entry.context();
        String host = context.host() == null ? "" : context.host();
        replies.show(
                context, "link.jte", LinkView.of(file.job().id(), context.scheme() + "://" + host, "/said/" + token));
        return "";
    }
}
