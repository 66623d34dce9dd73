package putback.app.web;

import io.javalin.config.RoutesConfig;

/** What stands at the front where no books are kept: the sheets. */
final class FirstPage implements PageGroup {
    private final Replies replies;

    FirstPage(Replies replies) {
        this.replies = replies;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/search", context -> context.redirect("/sheets"));
        routes.get(
                "/", context -> replies.page(context, replies.pages().fill("sheets.jte", "sheets", SheetView.all())));
    }
}
