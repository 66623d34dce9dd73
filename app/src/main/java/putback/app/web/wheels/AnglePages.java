package putback.app.web.wheels;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import putback.angles.adjusting.AngleJob;
import putback.app.papers.HouseStyle;
import putback.app.papers.JobHead;
import putback.app.papers.Papers;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;

/** Where wheels point, and a corner through its travel: questions that leave nothing behind. */
public final class AnglePages implements PageGroup {
    private final Replies replies;

    public AnglePages(Replies replies) {
        this.replies = replies;
    }

    @Override
    public void add(RoutesConfig routes) {
        for (String path : List.of("/angles", "/angles-part")) {
            routes.get(path, this::angles);
            routes.post(path, this::angles);
        }
        routes.get("/angles.pdf", this::paper);
        routes.post("/angles.pdf", this::paper);
        for (String path : List.of("/corner", "/corner-part")) {
            routes.get(path, this::corner);
            routes.post(path, this::corner);
        }
    }

    private void angles(Context context) {
        replies.show(context, Replies.isPart(context) ? "anglesPart.jte" : "angles.jte", WheelsView.of(given(context)));
    }

    /** On paper; the page again where there is nothing to print. */
    private void paper(Context context) {
        WheelsView view = WheelsView.of(given(context));
        AngleJob job = view.job();
        if (job == null) {
            context.status(422);
            replies.show(context, "angles.jte", view);
            return;
        }
        context.contentType("application/pdf");
        context.header("Content-Disposition", "inline; filename=\"wheel-angles.pdf\"");
        context.result(Papers.angles(job, JobHead.BLANK, HouseStyle.PLAIN));
    }

    private void corner(Context context) {
        replies.show(context, Replies.isPart(context) ? "cornerPart.jte" : "corner.jte", CornerView.of(given(context)));
    }

    /** The first value of each name, from the address or the body. */
    private static Map<String, String> given(Context context) {
        Map<String, String> values = Replies.typed(context);
        values.putAll(Replies.sent(context));
        return values;
    }
}
