package putback.app.web.job;

import io.javalin.http.Context;
import java.util.List;
import putback.app.papers.HouseStyle;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.plan.Plan;
import putback.store.books.Books;
import putback.store.books.Settings;

/** Shows the page of a job: as it is, or with why something was not kept and what was typed. */
final class JobShown {
    private final Replies replies;
    private final Books books;
    private final Shelf shelf;
    private final Ledgers ledgers;

    JobShown(Replies replies, Books books, Shelf shelf, Ledgers ledgers) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
        this.ledgers = ledgers;
    }

    /** The page with a sentence at its top; empty for none. */
    void show(Context context, JobFile file, String said, Typed typed) {
        var settings = new Settings(books).all();
        Quoting quoting = Quoting.of(file, shelf, settings);
        Plan plan = quoting.plan();
        HouseStyle style = PaperPages.style(settings);
        JobView.Ledger ledger = new JobView.Ledger(
                ledgers.owes(file, plan),
                plan == null ? List.of() : ledgers.notDriven(file, plan),
                ledgers.broke(file, plan, style),
                ledgers.started(file));
        replies.show(context, "job.jte", JobView.of(file, quoting, style, ledger, said, typed));
    }

    /** The same for what cannot be done or kept as it was sent. */
    void refuse(Context context, JobFile file, String said, Typed typed) {
        context.status(422);
        context.attribute(Replies.TOLD, true);
        show(context, file, said, typed);
    }
}
