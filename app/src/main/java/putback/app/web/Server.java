package putback.app.web;

import io.javalin.Javalin;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import putback.app.json.PlanJson;
import putback.app.ladder.LadderSize;
import putback.app.ladder.LadderSvg;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** Serves the pages on the loopback address. Nothing it sends names another address. */
public final class Server implements AutoCloseable {
    private static final String LOOPBACK = "127.0.0.1";

    private final Pages pages = new Pages();
    private final Javalin javalin;

    private Server(int port) {
        Logger.getLogger("").setLevel(Level.WARNING);
        javalin = Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.startup.showOldJavalinVersionWarning = false;
                    routes(config.routes);
                })
                .start(LOOPBACK, port);
    }

    /**
     * Starts serving.
     *
     * @param port 0 for any that is free
     */
    public static Server start(int port) {
        return new Server(port);
    }

    /** Where it is reached, without a slash at the end. */
    public String address() {
        return "http://" + LOOPBACK + ":" + javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }

    private void routes(RoutesConfig routes) {
        routes.before(Server::guard);
        routes.get("/", context -> page(context, pages.sheets(SheetView.all())));
        routes.get("/sheet/{id}", this::sheet);
        routes.get("/plan", this::plan);
        routes.get("/plan.svg", context -> file(context, "image/svg+xml"));
        routes.get("/plan.json", context -> file(context, "application/json"));
        routes.get("/page.css", context -> asset(context, "page.css", "text/css"));
        routes.get("/page.js", context -> asset(context, "page.js", "text/javascript"));
        routes.error(404, "html", context -> {
            if (context.resultInputStream() == null || "Not Found".equals(context.result())) {
                refuse(context, new Answer.Refused(404, "No such page", List.of("There is nothing at this address.")));
            }
        });
        routes.exception(
                RuntimeException.class,
                (fault, context) -> refuse(
                        context,
                        new Answer.Refused(500, "A fault in the program", List.of("Maybe go back and try again."))));
    }

    /** No page may load, run or be framed by anything from elsewhere. */
    private static void guard(Context context) {
        context.header(
                "Content-Security-Policy",
                "default-src 'self'; style-src 'self' 'unsafe-inline'; base-uri 'none'; form-action 'self';"
                        + " frame-ancestors 'none'");
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        context.header("Cache-Control", "no-store");
    }

    private void sheet(Context context) {
        String id = context.pathParam("id");
        if (SheetReader.stockIds().contains(id) && SheetReader.stock(id) instanceof Read.Sheet sheet) {
            page(context, pages.sheet(SheetView.of(id, sheet.assembly())));
        } else {
            refuse(context, new Answer.Refused(404, "No such sheet", List.of("There is no sheet called " + id + ".")));
        }
    }

    private void plan(Context context) {
        Question question = question(context);
        Answer answer = Answer.to(question);
        if (answer instanceof Answer.Refused refused) {
            refuse(context, refused);
        } else {
            page(context, pages.plan(PlanView.of(question, ((Answer.Planned) answer).plan())));
        }
    }

    private void file(Context context, String type) {
        Answer answer = Answer.to(question(context));
        if (answer instanceof Answer.Planned planned) {
            boolean svg = type.startsWith("image");
            context.contentType(type + "; charset=utf-8");
            context.result(svg ? LadderSvg.draw(planned.plan(), LadderSize.WIDE) : PlanJson.of(planned.plan()));
        } else {
            refuse(context, (Answer.Refused) answer);
        }
    }

    private static Question question(Context context) {
        String sheet = context.queryParam("sheet");
        String side = context.queryParam("side");
        return new Question(sheet == null ? "" : sheet, context.queryParams("renew"), side == null ? "both" : side);
    }

    private static void page(Context context, String html) {
        context.contentType("text/html; charset=utf-8").result(html);
    }

    private void refuse(Context context, Answer.Refused refused) {
        context.status(refused.status());
        page(context, pages.message(refused.heading(), refused.lines()));
    }

    private static void asset(Context context, String name, String type) throws IOException {
        try (InputStream stream = Server.class.getResourceAsStream("/putback/app/web/" + name)) {
            if (stream == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            context.contentType(type + "; charset=utf-8");
            context.result(stream.readAllBytes());
        }
    }
}
