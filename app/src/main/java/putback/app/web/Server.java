package putback.app.web;

import io.javalin.Javalin;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import putback.app.json.PlanJson;
import putback.app.ladder.LadderSize;
import putback.app.ladder.LadderSvg;
import putback.plan.Plan;
import putback.quantity.Shown;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** Serves the pages on the loopback address. Nothing it sends names another address. */
public final class Server implements AutoCloseable {
    private static final String LOOPBACK = "127.0.0.1";

    /** Kept, since a logger that nobody holds forgets its level. */
    private static final List<Logger> QUIET =
            List.of(Logger.getLogger("io.javalin"), Logger.getLogger("org.eclipse.jetty"));

    private static final Logger LOG = Logger.getLogger(Server.class.getName());
    private static final String TOLD = "told";

    private final Pages pages = new Pages();
    private final Javalin javalin;
    private final Garage garage;
    private final Remembered remembered = new Remembered();

    private Server(int port, Garage garage) {
        this.garage = garage;
        QUIET.forEach(logger -> logger.setLevel(Level.OFF));
        javalin = Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.startup.showOldJavalinVersionWarning = false;
                    config.startup.startupWatcherEnabled = false;
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
        return start(port, Garage.UNKNOWN);
    }

    /** Starts serving a garage that has a toolbox. */
    public static Server start(int port, Garage garage) {
        return new Server(port, garage);
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
        routes.get("/tightening", this::tightening);
        routes.get("/tightening-part", this::tightening);
        for (String path : List.of("/angles", "/angles-part")) {
            routes.get(path, this::angles);
            routes.post(path, this::angles);
        }
        for (String path : List.of("/corner", "/corner-part")) {
            routes.get(path, this::corner);
            routes.post(path, this::corner);
        }
        routes.get("/price", this::price);
        routes.get("/price-part", this::price);
        routes.get("/plan.svg", context -> file(context, "image/svg+xml"));
        routes.get("/plan.json", context -> file(context, "application/json"));
        routes.get("/page.css", context -> asset(context, "page.css", "text/css"));
        routes.get("/page.js", context -> asset(context, "page.js", "text/javascript"));
        routes.get("/plan-part", this::plan);
        routes.get("/mark.svg", context -> asset(context, "mark.svg", "image/svg+xml"));
        routes.error(404, context -> {
            if (context.attribute(TOLD) == null) {
                refuse(context, new Answer.Refused(404, "No such page", List.of("There is nothing at this address.")));
            }
        });
        routes.exception(Exception.class, (fault, context) -> {
            LOG.log(Level.SEVERE, () -> "a fault in the program itself, at " + context.path() + ": " + fault);
            refuse(context, new Answer.Refused(500, "A fault in the program", List.of("Maybe go back and try again.")));
        });
    }

    /** A page of another site that has its name point here is not this machine. */
    private static boolean isThisMachine(@Nullable String host) {
        if (host == null) {
            return false;
        }
        int colon = host.indexOf(':');
        String name = colon < 0 ? host : host.substring(0, colon);
        return name.equals(LOOPBACK) || name.equals("localhost");
    }

    /** No page may load, run or be framed by anything from elsewhere. */
    private static void guard(Context context) {
        context.header(
                "Content-Security-Policy",
                "default-src 'self'; style-src 'self' 'unsafe-inline'; base-uri 'none'; form-action 'self';"
                        + " frame-ancestors 'none'");
        if (!isThisMachine(context.host())) {
            context.status(403)
                    .result("Putback answers only to this machine's own name.")
                    .skipRemainingHandlers();
        }
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        context.header("Cache-Control", "no-store");
    }

    /** Refuses what is given more often than it can mean anything. */
    private boolean isDoubled(Context context) {
        for (String name : List.of("sheet", "side")) {
            if (context.queryParams(name).size() > 1) {
                String said = "The address gives " + name + " more than once; give it once.";
                refuse(context, new Answer.Refused(400, "Not understood", List.of(said)));
                return true;
            }
        }
        return false;
    }

    private void sheet(Context context) {
        if (isDoubled(context)) {
            return;
        }
        String id = context.pathParam("id");
        Question chosen = Question.of(id, context.queryParams("renew"), context.queryParam("side"));
        if (SheetReader.stockIds().contains(id) && SheetReader.stock(id) instanceof Read.Sheet sheet) {
            page(context, pages.sheet(SheetView.of(chosen, sheet.assembly())));
        } else {
            String said = "There is no sheet called " + Shown.text(id) + ".";
            refuse(context, new Answer.Refused(404, "No such sheet", List.of(said)));
        }
    }

    private void plan(Context context) {
        if (isDoubled(context)) {
            return;
        }
        Question question = question(context);
        Answer answer = Answer.to(question);
        if (answer instanceof Answer.Refused refused) {
            refuse(context, refused);
        } else {
            Plan plan = ((Answer.Planned) answer).plan();
            PlanView view = PlanView.of(question, plan, garage.tray(plan));
            page(context, isPart(context) ? pages.part(view) : pages.plan(view));
        }
    }

    private void tightening(Context context) {
        TighteningView view = TighteningView.of(typed(context), garage);
        page(context, isPart(context) ? pages.tighteningPart(view) : pages.tightening(view));
    }

    private void angles(Context context) {
        page(context, pages.angles(WheelsView.of(sent(context)), isPart(context)));
    }

    private void corner(Context context) {
        page(context, pages.corner(CornerView.of(sent(context)), isPart(context)));
    }

    /** The first value of each name, from the address or the body. */
    private static Map<String, String> sent(Context context) {
        Map<String, String> values = typed(context);
        for (Map.Entry<String, List<String>> value : context.formParamMap().entrySet()) {
            values.put(value.getKey(), value.getValue().get(0));
        }
        return values;
    }

    private void price(Context context) {
        if (isDoubled(context)) {
            return;
        }
        Question question = question(context);
        Answer answer = Answer.to(question);
        if (answer instanceof Answer.Refused refused) {
            refuse(context, refused);
        } else {
            PriceView view = PriceView.of(question, ((Answer.Planned) answer).plan(), typed(context), remembered);
            page(context, isPart(context) ? pages.pricePart(view) : pages.price(view));
        }
    }

    /** The first value of each name. */
    private static Map<String, String> typed(Context context) {
        Map<String, String> values = new HashMap<>();
        for (Map.Entry<String, List<String>> value : context.queryParamMap().entrySet()) {
            values.put(value.getKey(), value.getValue().get(0));
        }
        return values;
    }

    private void file(Context context, String type) {
        if (isDoubled(context)) {
            return;
        }
        Answer answer = Answer.to(question(context));
        if (answer instanceof Answer.Planned planned) {
            boolean svg = type.startsWith("image");
            context.contentType(type + "; charset=utf-8");
            context.result(
                    svg
                            ? LadderSvg.draw(planned.plan(), LadderSize.PAPER)
                            : PlanJson.of(planned.plan(), garage.tray(planned.plan())));
        } else {
            refuse(context, (Answer.Refused) answer);
        }
    }

    private static Question question(Context context) {
        return Question.of(context.queryParam("sheet"), context.queryParams("renew"), context.queryParam("side"));
    }

    private static boolean isPart(Context context) {
        return context.path().endsWith("-part");
    }

    private static void page(Context context, String html) {
        context.contentType("text/html; charset=utf-8").result(html);
    }

    private void refuse(Context context, Answer.Refused refused) {
        context.status(refused.status());
        context.attribute(TOLD, true);
        page(
                context,
                isPart(context)
                        ? pages.refused(refused.heading(), refused.lines())
                        : pages.message(refused.heading(), refused.lines()));
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
