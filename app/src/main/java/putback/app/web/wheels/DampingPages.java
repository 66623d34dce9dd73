package putback.app.web.wheels;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.quantity.Shown;
import putback.store.sheets.TraceReader;

/** A recorded bounce, and the wind-up of a bush: questions that leave nothing behind. */
public final class DampingPages implements PageGroup {
    private static final List<String> FILES = List.of("first", "second");

    private final Replies replies;

    public DampingPages(Replies replies) {
        this.replies = replies;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/bounce", context -> replies.show(context, "bounce.jte", BounceView.EMPTY));
        routes.post("/bounce", this::bounce);
        for (String path : List.of("/bush", "/bush-part")) {
            routes.get(path, this::bush);
            routes.post(path, this::bush);
        }
    }

    private void bounce(Context context) throws IOException {
        List<BounceView.Sent> sent = new ArrayList<>();
        for (String name : FILES) {
            UploadedFile file = context.isMultipartFormData() ? context.uploadedFile(name) : null;
            if (file != null && file.size() > 0) {
                try (InputStream content = file.content()) {
                    byte[] bytes = content.readNBytes(TraceReader.mostBytes() + 1);
                    sent.add(new BounceView.Sent(Shown.text(file.filename()), bytes));
                }
            }
        }
        boolean inTime = "time".equals(Replies.sent(context).get("against"));
        BounceView view = BounceView.of(sent, inTime);
        context.status(view.report() == null ? 422 : 200);
        replies.show(context, "bounce.jte", view);
    }

    private void bush(Context context) {
        Map<String, String> values = Replies.typed(context);
        values.putAll(Replies.sent(context));
        replies.show(context, Replies.isPart(context) ? "bushPart.jte" : "bush.jte", BushView.of(values));
    }
}
