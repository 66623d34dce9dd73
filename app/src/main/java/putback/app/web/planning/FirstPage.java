package putback.app.web.planning;

import io.javalin.config.RoutesConfig;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;

/** What stands at the front where no books are kept: the sheets. */
public final class FirstPage implements PageGroup {
    private final Replies replies;

    public FirstPage(Replies replies) {
        this.replies = replies;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/search", context -> context.redirect("/sheets"));
        routes.get(
                "/", context -> replies.page(context, replies.pages().fill("sheets.jte", "sheets", SheetView.all())));
    }
}
