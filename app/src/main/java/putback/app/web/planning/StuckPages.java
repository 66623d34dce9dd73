package putback.app.web.planning;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;

/** A fastener that will not move, without a job; and what else is asked without one. Nothing is kept. */
public final class StuckPages implements PageGroup {
    private final Replies replies;

    public StuckPages(Replies replies) {
        this.replies = replies;
    }

    @Override
    public void add(RoutesConfig routes) {
        for (String path : List.of("/stuck", "/stuck-part")) {
            routes.get(path, this::stuck);
            routes.post(path, this::stuck);
        }
        routes.get("/more", context -> replies.show(context, "more.jte", ""));
    }

    private void stuck(Context context) {
        Map<String, String> values = Replies.typed(context);
        values.putAll(Replies.sent(context));
        List<String> near = new ArrayList<>(context.queryParams("near"));
        near.addAll(context.formParams("near"));
        values.remove("near");
        StuckView view = StuckView.of(values, near);
        replies.show(context, Replies.isPart(context) ? "stuckPart.jte" : "stuck.jte", view);
    }
}
