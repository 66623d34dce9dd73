package putback.app.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.store.books.Approval;
import putback.store.books.Approvals;
import putback.store.books.Audit;
import putback.store.books.Books;
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
            replies.refuse(
                    context,
                    new Answer.Refused(
                            404,
                            "This link no longer holds",
                            List.of("It has ended, or part of it is missing. Ask the garage for a new one.")));
        }
        return file;
    }

    private void show(Context context, String said) {
        JobFile file = file(context);
        if (file != null) {
            Quoting quoting = Quoting.of(file, shelf, new Settings(books).all());
            replies.show(context, "said.jte", SaidView.of(file, quoting, new Settings(books).all(), said));
        }
    }

    private void say(Context context) {
        JobFile file = file(context);
        if (file == null) {
            return;
        }
        Form form = Form.of(context);
        Quoting quoting = Quoting.of(file, shelf, new Settings(books).all());
        String total = JobPages.total(quoting.total());
        if (!form.text("total").equals(total)) {
            context.status(409);
            show(context, "The garage has changed this estimate since you opened it. Please read it again.");
            return;
        }
        if (form.text("who").isEmpty()) {
            context.status(422);
            show(context, "Please write your name: it says who answered.");
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
                yes ? total : "",
                total,
                form.text("words"),
                form.text("who"),
                "");
        books.write(change -> {
            new Audit(books)
                    .add(change, form.text("who"), file.job().id(), yes ? "said yes" : "said no", "by the link");
            return new Approvals(books).add(change, said);
        });
        show(context, yes ? "Thank you. The garage sees your yes now." : "Thank you. The garage sees your no now.");
    }
}
