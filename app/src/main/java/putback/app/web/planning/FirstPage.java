package putback.app.web.planning;

import io.javalin.config.RoutesConfig;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;

/** What stands at the front where no books are kept: the sheets. */
public final class FirstPage implements PageGroup {
    private final Replies replies;
    private final Shelf shelf;

    public FirstPage(Replies replies, Shelf shelf) {
        this.replies = replies;
        this.shelf = shelf;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/search", context -> context.redirect("/sheets"));
        routes.get(
                "/",
                context -> replies.page(context, replies.pages().fill("sheets.jte", "sheets", SheetView.all(shelf))));
    }
}
