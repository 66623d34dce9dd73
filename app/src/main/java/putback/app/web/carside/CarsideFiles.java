package putback.app.web.carside;

import io.javalin.config.RoutesConfig;
import java.util.List;
import putback.app.web.frame.Assets;

/** The script and the style of the page at the car. */
final class CarsideFiles {
    static final List<String> SCRIPTS = List.of(
            "main",
            "make",
            "shelf",
            "sync",
            "fold",
            "card",
            "parts",
            "panels",
            "resorts",
            "ladder",
            "done",
            "device",
            "pay",
            "standing",
            "broken");

    private CarsideFiles() {}

    static void add(RoutesConfig routes) {
        for (String name : SCRIPTS) {
            routes.get(
                    "/carside/" + name + ".js",
                    context -> Assets.send(context, "carside/" + name + ".js", "text/javascript"));
        }
        routes.get("/carside/carside.css", context -> Assets.send(context, "carside/carside.css", "text/css"));
        routes.get("/carside/worker.js", context -> {
            context.header("Service-Worker-Allowed", "/job/");
            Assets.send(context, "carside/worker.js", "text/javascript");
        });
    }
}
