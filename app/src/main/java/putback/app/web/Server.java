package putback.app.web;

import io.javalin.Javalin;
import io.javalin.config.RoutesConfig;
import io.javalin.http.HttpResponseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.server.ServerConnector;
import org.jspecify.annotations.Nullable;
import putback.app.access.Network;
import putback.app.web.card.CardPages;
import putback.app.web.carside.CarsidePages;
import putback.app.web.desk.AuditPages;
import putback.app.web.desk.GaragePages;
import putback.app.web.desk.SettingPages;
import putback.app.web.door.DevicePages;
import putback.app.web.door.Gate;
import putback.app.web.door.Guard;
import putback.app.web.door.MePages;
import putback.app.web.door.PeoplePages;
import putback.app.web.door.SignInPages;
import putback.app.web.door.TrustPages;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Assets;
import putback.app.web.frame.Garage;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Pages;
import putback.app.web.frame.Received;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.app.web.frame.Visitor;
import putback.app.web.job.AskPages;
import putback.app.web.job.JobPages;
import putback.app.web.job.JobPricing;
import putback.app.web.job.Ledgers;
import putback.app.web.job.PaperPages;
import putback.app.web.job.PartPages;
import putback.app.web.job.PhotoPages;
import putback.app.web.job.RustPages;
import putback.app.web.job.SaidPages;
import putback.app.web.planning.FirstPage;
import putback.app.web.planning.Pricing;
import putback.app.web.planning.SheetPages;
import putback.app.web.planning.StuckPages;
import putback.app.web.wheels.AnglePages;
import putback.app.web.wheels.DampingPages;
import putback.store.books.Books;
import putback.store.photos.PhotoFiles;

/** Serves the pages: on the loopback address to whoever sits there, or to the garage's network. Nothing it sends names another address. */
public final class Server implements AutoCloseable {
    private static final String LOOPBACK = Network.LOOPBACK;

    /** Kept, since a logger that nobody holds forgets its level. */
    private static final List<Logger> QUIET =
            List.of(Logger.getLogger("io.javalin"), Logger.getLogger("org.eclipse.jetty"));

    private static final Logger LOG = Logger.getLogger(Server.class.getName());

    private final Replies replies = new Replies(new Pages());
    private final Javalin javalin;
    private final List<PageGroup> groups = new ArrayList<>();
    private final @Nullable Network network;
    private final Received received = new Received();
    private final Guard guard;
    private final @Nullable Books books;

    private Server(int port, Garage garage, @Nullable Network network) {
        this.network = network;
        books = garage.books();
        guard = new Guard(network == null ? Set.of(LOOPBACK, "localhost") : network.hosts());
        Shelf shelf = new Shelf(garage);
        groups.add(new Assets());
        Pricing pricing = books == null ? Pricing.EXAMPLES : new JobPricing(books);
        groups.add(new SheetPages(replies, garage, shelf, pricing));
        groups.add(new StuckPages(replies));
        groups.add(new AnglePages(replies));
        groups.add(new DampingPages(replies));
        if (books == null) {
            groups.add(new FirstPage(replies, shelf));
        } else {
            Ledgers ledgers = new Ledgers(books);
            groups.add(new GaragePages(replies, books, shelf, ledgers));
            groups.add(new JobPages(replies, books, shelf, ledgers));
            groups.add(new AskPages(replies, books, shelf, ledgers));
            groups.add(new PartPages(replies, books, shelf, ledgers));
            groups.add(new RustPages(replies, books, shelf));
            groups.add(new SaidPages(replies, books, shelf));
            groups.add(new PaperPages(replies, books, shelf, garage, ledgers));
            groups.add(new SettingPages(replies, books));
            groups.add(new CardPages(replies, books, shelf));
            groups.add(new CarsidePages(replies, garage, shelf));
            PhotoFiles photos = garage.photos();
            if (photos != null) {
                groups.add(new PhotoPages(replies, books, photos));
            }
            groups.add(new AuditPages(replies, books));
            addDoor(books);
        }
        QUIET.forEach(logger -> logger.setLevel(Level.OFF));
        javalin = Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.startup.showOldJavalinVersionWarning = false;
                    config.startup.startupWatcherEnabled = false;
                    Ways.set(config, port, network);
                    routes(config.routes);
                })
                .start();
    }

    /** How people say who they are. */
    private void addDoor(Books kept) {
        if (network == null) {
            groups.add(new MePages());
        } else {
            groups.add(new SignInPages(replies, kept));
            groups.add(new PeoplePages(replies, kept));
            groups.add(new DevicePages(replies, kept, network));
            groups.add(new TrustPages(replies, network));
        }
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
        return new Server(port, garage, null);
    }

    /**
     * Starts serving a garage's books to its network, over HTTPS and only to those who sign in.
     *
     * @param garage with books: there is nobody to sign in without them
     */
    public static Server start(int port, Garage garage, Network network) {
        if (garage.books() == null) {
            throw new IllegalArgumentException("there are no books with people in them");
        }
        return new Server(port, garage, network);
    }

    /** Where it is reached on this machine, without a slash at the end. */
    public String address() {
        return (network == null ? "http://" : "https://") + LOOPBACK + ":" + javalin.port();
    }

    /** Where phones learn to trust it, without HTTPS. */
    public String trustAddress() {
        if (network == null) {
            throw new IllegalStateException("nothing is to be trusted on this machine");
        }
        ServerConnector plain = (ServerConnector) javalin.jettyServer().server().getConnectors()[1];
        return "http://" + network.forPhones() + ":" + plain.getLocalPort() + "/trust";
    }

    /** All methods and addresses that it answers, such as {@code GET /job/{id}}. */
    List<String> routes() {
        List<String> all = new ArrayList<>();
        javalin.unsafe
                .internalRouter
                .allHttpHandlers()
                .forEach(parsed -> all.add(parsed.endpoint.method + " " + parsed.endpoint.path));
        return all;
    }

    @Override
    public void close() {
        groups.forEach(PageGroup::close);
        javalin.stop();
    }

    private void routes(RoutesConfig routes) {
        routes.before(guard::look);
        if (books != null && network != null) {
            routes.before(new Gate(replies, books)::look);
        } else if (books != null) {
            routes.before(context -> Visitor.said(context).arrives(context));
        }
        routes.before(received::look);
        for (PageGroup group : groups) {
            group.add(routes);
        }
        routes.after(received::remember);
        routes.exception(
                HttpResponseException.class, (fault, context) -> replies.refuse(context, said(fault.getStatus())));
        routes.exception(Exception.class, (fault, context) -> {
            int sent = faultOfWhatWasSent(fault);
            if (sent != 0) {
                replies.refuse(context, said(sent));
                return;
            }
            LOG.log(Level.SEVERE, () -> "a fault in the program itself, at " + context.path() + ": " + fault);
            replies.refuse(
                    context,
                    new Answer.Refused(500, "A fault in the program", List.of("Maybe go back and try again.")));
        });
    }

    /** The status by which an unreadable body is answered; 0 when the fault is another one. */
    private static int faultOfWhatWasSent(Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof HttpException unreadable && unreadable.getCode() < 500) {
                return unreadable.getCode();
            }
        }
        return 0;
    }

    private static Answer.Refused said(int status) {
        return switch (status) {
            case 404 -> new Answer.Refused(404, "No such page", List.of("There is nothing at this address."));
            case 413 -> new Answer.Refused(413, "Too much at once", List.of("A form of more than 1 MB is not read."));
            default -> new Answer.Refused(status, "Not done", List.of("What was sent cannot be read as a form."));
        };
    }
}
