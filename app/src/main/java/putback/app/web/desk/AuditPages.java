package putback.app.web.desk;

import io.javalin.config.RoutesConfig;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.store.books.Audit;
import putback.store.books.Books;

/** Who did what to money, approvals, people and settings. */
public final class AuditPages implements PageGroup {
    private static final int MOST = 200;

    private final Replies replies;
    private final Books books;

    public AuditPages(Replies replies, Books books) {
        this.replies = replies;
        this.books = books;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/audit", context -> replies.show(context, "audit.jte", new Audit(books).latest(MOST)));
    }
}
