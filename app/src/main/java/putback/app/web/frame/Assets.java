package putback.app.web.frame;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;

/** Files that come with the program. */
public final class Assets implements PageGroup {
    @Override
    public void add(RoutesConfig routes) {
        routes.get("/page.css", context -> send(context, "page.css", "text/css"));
        routes.get("/page.js", context -> send(context, "page.js", "text/javascript"));
        routes.get("/typed.js", context -> send(context, "typed.js", "text/javascript"));
        routes.get("/card.js", context -> send(context, "card.js", "text/javascript"));
        routes.get("/mark.svg", context -> send(context, "mark.svg", "image/svg+xml"));
    }

    /** Sends a file that comes with the program; a missing page where there is none. */
    public static void send(Context context, String name, String type) throws IOException {
        try (InputStream stream = Assets.class.getResourceAsStream("/putback/app/web/" + name)) {
            if (stream == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            context.contentType(type + "; charset=utf-8");
            context.result(stream.readAllBytes());
        }
    }
}
