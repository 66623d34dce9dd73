package putback.app.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.job.Course;
import putback.job.Stage;
import putback.job.Standing;
import putback.plan.Plan;
import putback.quantity.Parsed;
import putback.store.books.Approval;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.KeptEstimate;
import putback.store.books.KeptEstimates;
import putback.store.books.PartLine;
import putback.store.books.Saved;
import putback.store.books.Scope;
import putback.store.books.Settings;
import putback.store.database.Change;

/** The page of a job: its course from the question to the handover. */
public final class JobPages implements PageGroup {
    private final Replies replies;
    private final Books books;
    private final Shelf shelf;
    private final Ledgers ledgers;
    private final JobShown shown;

    public JobPages(Replies replies, Books books, Shelf shelf, Ledgers ledgers) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
        this.ledgers = ledgers;
        shown = new JobShown(replies, books, shelf, ledgers);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/job/{id}", context -> with(context, file -> show(context, file, "")));
        routes.post("/job/{id}/arrival", context -> keep(context, JobForms::arrival));
        routes.post("/job/{id}/terms", context -> keep(context, JobForms::terms));
        routes.get("/job/{id}/scope", context -> with(context, file -> scope(context, file)));
        routes.post("/job/{id}/scope", context -> keep(context, JobForms::scope));
        routes.post("/job/{id}/move", context -> with(context, file -> move(context, file)));
    }

    /** Does something with the job that the address names. */
    private void with(Context context, java.util.function.Consumer<JobFile> work) {
        String id = context.pathParam("id");
        JobFile file = JobFile.open(books, id);
        if (file == null) {
            replies.missing(context, "job", id);
        } else {
            work.accept(file);
        }
    }

    private void show(Context context, JobFile file, String said) {
        shown.show(context, file, said, Typed.NOTHING);
    }

    private void scope(Context context, JobFile file) {
        if (!file.closed().isEmpty()) {
            shown.refuse(context, file, "Not to be changed: " + file.closed() + ".", Typed.NOTHING);
            return;
        }
        replies.show(context, "scope.jte", ScopeView.of(file, shelf, context.queryParam("sheet")));
    }

    /** Keeps what a form says of the job, over the version that the form was made from. */
    private void keep(Context context, BiFunction<JobFile, Form, Parsed<Job>> change) {
        with(context, file -> {
            Form form = Form.of(context);
            Parsed<Job> read = form.fault().isEmpty() ? change.apply(file, form) : new Parsed.Refused<>(form.fault());
            if (!(read instanceof Parsed.Value<Job> value)) {
                refuse(context, file, form, read.refusal() + ".");
                return;
            }
            Job wanted = value.value().at(form.number("version"));
            Scope before = file.job().scope();
            Quoting quoting = wanted.scope().equals(before)
                    ? Quoting.NOTHING
                    : Quoting.of(file.with(wanted), shelf, new Settings(books).all());
            if (!wanted.scope().terms().equals(before.terms())
                    && !quoting.fault().isEmpty()) {
                refuse(context, file, form, quoting.fault());
                return;
            }
            String words = wanted.scope().equals(before) ? "" : History.said(wanted.scope(), quoting.plan());
            Saved<Job> saved = books.write(writing -> {
                Saved<Job> kept = new Jobs(books).save(writing, wanted);
                if (kept instanceof Saved.Done<Job> && !words.isEmpty()) {
                    new Audit(books).add(writing, form.who(), wanted.id(), "the work and its terms", words);
                }
                return kept;
            });
            shelf.learn(wanted.id());
            back(context, file, saved, form);
        });
    }

    private void refuse(Context context, JobFile file, Form form, String said) {
        String path = context.path();
        Typed typed = new Typed(path.substring(path.lastIndexOf('/') + 1), form.values());
        shown.refuse(context, file, "Not kept yet: " + said, typed);
    }

    private void back(Context context, JobFile file, Saved<Job> saved, Form form) {
        String page = "/job/" + file.job().id();
        if (saved instanceof Saved.Done<Job>) {
            context.redirect(page, HttpStatus.SEE_OTHER);
        } else {
            replies.overtaken(context, page, form);
        }
    }

    private void move(Context context, JobFile file) {
        Form form = Form.of(context);
        Stage to = Stage.named(form.text("to"));
        if (to == null) {
            replies.missing(context, "stage", form.text("to"));
            return;
        }
        Quoting quoting = Quoting.of(file, shelf, new Settings(books).all());
        Parsed<Stage> may = may(file, to, quoting);
        if (may instanceof Parsed.Refused<Stage> refused) {
            context.status(422);
            show(context, file, "Not " + to.words() + " yet: " + refused.message() + ".");
            return;
        }
        Job job = file.job().at(form.number("version"));
        KeptEstimate charged = charged(file, quoting, to, form.who());
        Saved<Job> saved = books.write(change -> {
            Saved<Job> moved = new Jobs(books).move(change, job, to, form.who(), form.text("why"));
            if (moved instanceof Saved.Done<Job>) {
                new Audit(books).add(change, form.who(), job.id(), "moved", to.words());
                after(change, file, quoting, to, charged);
            }
            return moved;
        });
        shelf.learn(job.id());
        back(context, file, saved, form);
    }

    private Parsed<Stage> may(JobFile file, Stage to, Quoting quoting) {
        Parsed<Stage> may = Course.move(file.job().stage(), to, standing(file, to, quoting));
        boolean leaves = to == Stage.HANDED_OVER && file.job().stage() != to;
        return leaves && may instanceof Parsed.Value && quoting.estimate() == null
                ? new Parsed.Refused<>("there is no invoice to give with it: "
                        + (quoting.fault().isEmpty() ? "nothing is named that is renewed" : quoting.fault()))
                : may;
    }

    /** The invoice that goes with a car; null where the car does not leave, or nothing is charged. */
    private @Nullable KeptEstimate charged(JobFile file, Quoting quoting, Stage to, String by) {
        Plan plan = quoting.plan();
        if (to != Stage.HANDED_OVER || plan == null || file.job().stage() == to) {
            return null;
        }
        String currency = PaperPages.text(new Settings(books).all(), "currency");
        return Charged.now(file, quoting, ledgers.renewedAgain(file, plan), currency, by);
    }

    /**
     * What a stage brings with it: the day a car leaves, its invoice is kept as it goes with it; and where a wheel goes
     * back on the road, its fasteners are booked for another look.
     */
    private void after(Change change, JobFile file, Quoting quoting, Stage to, @Nullable KeptEstimate charged) {
        Plan plan = quoting.plan();
        if (to != Stage.HANDED_OVER || plan == null || file.job().stage() == to) {
            return;
        }
        if (charged != null) {
            new KeptEstimates(books).keepInvoice(change, charged);
        }
        if (file.rechecks().isEmpty() && Ledgers.wheelComesOff(plan)) {
            JobForms.bookRecheck(books, change, file);
        }
    }

    private Standing standing(JobFile file, Stage to, Quoting quoting) {
        Approval said = file.answer();
        List<String> missing = new ArrayList<>();
        for (PartLine line : file.parts()) {
            if (!line.isReady()) {
                missing.add(line.name());
            }
        }
        return new Standing(
                file.job().scope().named(),
                said != null && said.yes(),
                quoting.isOver(to == Stage.HANDED_OVER ? file.lastYes() : said),
                missing,
                ledgers.owes(file, quoting.plan()),
                ledgers.started(file),
                file.unanswered());
    }

    /** The price that is asked about; empty when there is none. */
    static String total(@Nullable BigDecimal total) {
        return total == null ? "" : total.toPlainString();
    }
}
