package putback.app.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.labour.price.Money;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.store.books.Approval;
import putback.store.books.Approvals;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.Finding;
import putback.store.books.Findings;
import putback.store.books.Links;
import putback.store.books.PartLine;
import putback.store.books.PartLines;
import putback.store.books.Recheck;
import putback.store.books.Rechecks;
import putback.store.books.RoadTests;
import putback.store.books.Saved;
import putback.store.books.Settings;

/** What is written down on a job's page: words of the owner, findings, parts, road tests, rechecks. */
public final class AskPages implements PageGroup {
    private static final Set<String> STATES = Set.of("to order", "ordered", "arrived", "compared");
    private static final Set<String> URGENCIES = Set.of("stop driving", "soon", "watch");
    private static final Duration LINK_HOLDS = Duration.ofDays(14);

    private final Replies replies;
    private final Books books;
    private final Shelf shelf;

    public AskPages(Replies replies, Books books, Shelf shelf) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post("/job/{id}/approval", context -> write(context, this::approval));
        routes.post("/job/{id}/finding", context -> write(context, this::finding));
        routes.post("/job/{id}/finding/{row}", context -> write(context, this::answer));
        routes.post("/job/{id}/parts", context -> write(context, this::parts));
        routes.post("/job/{id}/part/{row}", context -> write(context, this::part));
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
            replies.refuse(context, new Answer.Refused(422, "Not kept yet", List.of(fault)));
        } else if (context.attribute(Replies.TOLD) == null) {
            context.redirect("/job/" + id + form.text("place"), HttpStatus.SEE_OTHER);
        }
    }

    private static final String OVERTAKEN = "overtaken";

    private String approval(Entry entry) {
        Form form = entry.form();
        Quoting quoting = Quoting.of(entry.file(), shelf, new Settings(books).all());
        boolean yes = !form.text("yes").equals("no");
        String upTo = money(form.text("up-to"));
        if (form.text("who").isEmpty() || form.text("how").isEmpty()) {
            return "Write down who said it and how: on the phone, here, in writing.";
        }
        if (upTo.equals("?")) {
            return "\"" + form.text("up-to") + "\" is not an amount of money, such as 420 or 420.00.";
        }
        Approval said = new Approval(
                "",
                entry.file().job().id(),
                form.text("who"),
                form.text("how"),
                "",
                yes,
                upTo,
                JobPages.total(quoting.total()),
                form.text("words"),
                form.who(),
                "");
        books.write(change -> {
            Approval kept = new Approvals(books).add(change, said);
            new Audit(books)
                    .add(
                            change,
                            form.who(),
                            kept.job(),
                            yes ? "said yes" : "said no",
                            kept.who() + ", " + kept.how() + (upTo.isEmpty() ? "" : ", up to " + upTo));
            return kept;
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

    /** Puts down what the plan needs and nobody has put down yet. */
    private String parts(Entry entry) {
        Plan plan = Quoting.of(entry.file(), shelf, new Settings(books).all()).plan();
        if (plan == null) {
            return "Nothing is named that is to be renewed; tick it first.";
        }
        String job = entry.file().job().id();
        books.write(change -> {
            for (PartNeed need : plan.parts()) {
                boolean there = entry.file().parts().stream()
                        .anyMatch(line -> line.part().equals(need.id()));
                if (!there) {
                    String price = need.price() == null ? "" : need.price().toPlainString();
                    new PartLines(books)
                            .add(
                                    change,
                                    PartLine.wanted(job, need.id(), need.name(), need.count())
                                            .priced(price, ""));
                }
            }
            return plan.parts().size();
        });
        return "";
    }

    private String part(Entry entry) {
        Form form = entry.form();
        String row = entry.context().pathParam("row");
        for (PartLine line : entry.file().parts()) {
            if (line.id().equals(row)) {
                String state = form.oneOf("state", STATES, line.state());
                PartLine wanted = line.at(
                                form.text("supplier").isEmpty() ? line.supplier() : form.text("supplier"),
                                state,
                                state.equals("arrived") && form.text("looked").equals("right") ? form.who() : "")
                        .at(form.number("version"));
                Saved<PartLine> saved = books.write(change -> new PartLines(books).save(change, wanted));
                return saved instanceof Saved.Done ? "" : OVERTAKEN;
            }
        }
        return "There is no such part on this job.";
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
        if (!form.text("due").matches("\\d{4}-\\d\\d-\\d\\d")) {
            return "Give the day, such as 2026-03-09.";
        }
        String what = form.text("what").isEmpty() ? "wheel fasteners" : form.text("what");
        books.write(change -> new Rechecks(books)
                .add(change, entry.file().job().id(), form.text("due"), form.text("distance"), what));
        return "";
    }

    private String rechecked(Entry entry) {
        Form form = entry.form();
        String row = entry.context().pathParam("row");
        for (Recheck recheck : entry.file().rechecks()) {
            if (recheck.id().equals(row)) {
                Recheck seen = recheck.at(form.number("version"));
                Saved<Recheck> saved = books.write(change ->
                        new Rechecks(books).done(change, seen, form.text("distance"), form.who(), form.text("seen")));
                return saved instanceof Saved.Done ? "" : OVERTAKEN;
            }
        }
        return "There is no such recheck on this job.";
    }

    private String link(Entry entry) {
        String job = entry.file().job().id();
        String token = books.write(change -> {
            new Audit(books)
                    .add(change, entry.form().who(), job, "link made", "holds " + LINK_HOLDS.toDays() + " days");
            return new Links(books).make(change, job, LINK_HOLDS);
        });
        entry.context().attribute(Replies.TOLD, true);
        replies.show(
                entry.context(), "link.jte", new LinkView(job, entry.context().host(), "/said/" + token));
        return "";
    }
}
