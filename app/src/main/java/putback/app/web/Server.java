package putback.app.web;

import io.javalin.Javalin;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import putback.store.books.Books;
import putback.store.photos.PhotoFiles;

/** Serves the pages on the loopback address. Nothing it sends names another address. */
public final class Server implements AutoCloseable {
    private static final String LOOPBACK = "127.0.0.1";

    /** Kept, since a logger that nobody holds forgets its level. */
    private static final List<Logger> QUIET =
            List.of(Logger.getLogger("io.javalin"), Logger.getLogger("org.eclipse.jetty"));

    private static final Logger LOG = Logger.getLogger(Server.class.getName());

    private final Replies replies = new Replies(new Pages());
    private final Javalin javalin;
    private final List<PageGroup> groups = new ArrayList<>();

    private Server(int port, Garage garage) {
        Shelf shelf = new Shelf(garage);
        groups.add(new Assets());
        groups.add(new SheetPages(replies, garage, shelf));
        groups.add(new AnglePages(replies));
        Books books = garage.books();
        if (books == null) {
            groups.add(new FirstPage(replies));
        } else {
            Ledgers ledgers = new Ledgers(books);
            groups.add(new GaragePages(replies, books));
            groups.add(new JobPages(replies, books, shelf, ledgers));
            groups.add(new AskPages(replies, books, shelf));
            groups.add(new SaidPages(replies, books, shelf));
            groups.add(new PaperPages(replies, books, shelf, garage, ledgers));
            groups.add(new SettingPages(replies, books));
            groups.add(new CardPages(replies, books, shelf));
            groups.add(new CarsidePages(replies, garage, shelf));
            PhotoFiles photos = garage.photos();
            if (photos != null) {
                groups.add(new PhotoPages(replies, books, photos));
            }
        }
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
        groups.forEach(PageGroup::close);
        javalin.stop();
    }

    private void routes(RoutesConfig routes) {
        routes.before(Server::guard);
        for (PageGroup group : groups) {
            group.add(routes);
        }
        routes.error(404, context -> {
            if (context.attribute(Replies.TOLD) == null) {
                replies.refuse(
                        context, new Answer.Refused(404, "No such page", List.of("There is nothing at this address.")));
            }
        });
        routes.exception(Exception.class, (fault, context) -> {
            LOG.log(Level.SEVERE, () -> "a fault in the program itself, at " + context.path() + ": " + fault);
            replies.refuse(
                    context,
                    new Answer.Refused(500, "A fault in the program", List.of("Maybe go back and try again.")));
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

    /** A browser says where a form was sent from; what comes from another site's page is not what a person here meant. */
    private static boolean isForged(Context context) {
        String method = context.method().toString();
        if (method.equals("GET") || method.equals("HEAD")) {
            return false;
        }
        String origin = context.header("Origin");
        String site = context.header("Sec-Fetch-Site");
        boolean otherOrigin = origin != null
                && !origin.equals("http://" + context.host())
                && !origin.equals("https://" + context.host());
        return otherOrigin || (site != null && !site.equals("same-origin") && !site.equals("none"));
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
        if (isForged(context)) {
            context.status(403)
                    .result("This was sent from a page of another site; nothing was done.")
                    .skipRemainingHandlers();
        }
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "same-origin");
        context.header("Cache-Control", "no-store");
    }
}
