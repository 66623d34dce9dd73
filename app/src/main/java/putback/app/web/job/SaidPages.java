package putback.app.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.store.books.Approval;
import putback.store.books.Approvals;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.KeptEstimate;
import putback.store.books.KeptEstimates;
import putback.store.books.Links;
import putback.store.books.Settings;

/** What a customer sees behind the link: one estimate, and the yes or no to it. */
public final class SaidPages implements PageGroup {
    private final Replies replies;
    private final Books books;
    private final Shelf shelf;

    public SaidPages(Replies replies, Books books, Shelf shelf) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/said/{token}", context -> show(context, ""));
        routes.post("/said/{token}", this::say);
    }

    private @Nullable JobFile file(Context context) {
        String job = new Links(books).job(context.pathParam("token")).orElse(null);
        JobFile file = job == null ? null : JobFile.open(books, job);
        if (file == null) {
            context.status(404);
            context.attribute(Replies.TOLD, true);
            replies.show(context, "link-ended.jte", PaperPages.text(new Settings(books).all(), "garage"));
        }
        return file;
    }

    private void show(Context context, String told) {
        JobFile file = file(context);
        if (file != null) {
            show(context, file, put(file), told);
        }
    }

    private void show(Context context, JobFile file, @Nullable KeptEstimate put, String told) {
        replies.show(context, "said.jte", SaidView.of(file, put, new Settings(books).all(), told));
    }

    /** The estimate as it is now, kept as what the owner sees; null where there is nothing to put to him. */
    private @Nullable KeptEstimate put(JobFile file) {
        Map<String, String> settings = new Settings(books).all();
        Quoting quoting = Quoting.of(file, shelf, settings);
        KeptEstimate put = quoting.put(file, PaperPages.text(settings, "currency"), "opened by the link");
        return put == null ? null : books.write(change -> new KeptEstimates(books).keep(change, put));
    }

    private void say(Context context) {
        JobFile file = file(context);
        if (file == null) {
            return;
        }
        Form form = Form.of(context);
        KeptEstimate put = put(file);
        if (put == null || !form.text("estimate").equals(put.id())) {
            context.status(409);
            show(context, file, put, "The garage has changed this estimate since you opened it. Please read it again.");
            return;
        }
        if (form.text("who").isEmpty() || !form.fault().isEmpty()) {
            context.status(422);
            String why = form.fault().isEmpty() ? "Please write your name: it says who answered." : form.fault();
            show(context, file, put, why);
            return;
        }
        boolean yes = form.oneOf("yes", Set.of("yes", "no"), "no").equals("yes");
        Approval said = new Approval(
                "",
                file.job().id(),
                form.text("who"),
                "by the link",
                "",
                yes,
                yes ? put.asked() : "",
                put.asked(),
                form.text("words"),
                form.text("who"),
                put.id());
        books.write(change -> {
            new Audit(books)
                    .add(
                            change,
                            form.text("who"),
                            said.job(),
                            yes ? "said yes" : "said no",
                            "by the link" + (yes ? ", up to " + put.asked() : "") + ", to estimate " + put.number());
            return new Approvals(books).add(change, said);
        });
        show(context, yes ? "Thank you. The garage sees your yes now." : "Thank you. The garage sees your no now.");
    }
}
