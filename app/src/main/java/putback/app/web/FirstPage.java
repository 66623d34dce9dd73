package putback.app.web;

import io.javalin.config.RoutesConfig;

/** What stands at the front: the day of a garage that keeps books, else the sheets. */
final class FirstPage implements PageGroup {
    private final Replies replies;
    private final Garage garage;

    FirstPage(Replies replies, Garage garage) {
        this.replies = replies;
        this.garage = garage;
    }

    @Override
    public void add(RoutesConfig routes) {
        if (garage.books() == null) {
            routes.get("/", context -> replies.page(context, replies.pages().sheets(SheetView.all())));
        }
    }
}
