package putback.app.web.carside;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.json.JsonWriter;
import putback.app.web.frame.Garage;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.app.web.frame.Visitor;
import putback.ledger.Event;
import putback.store.books.Books;
import putback.store.books.Events;
import putback.store.books.Heard;
import putback.store.books.HeardDevices;
import putback.store.books.Jobs;
import putback.store.books.KeptEvent;
import putback.store.books.Received;
import putback.store.database.StoreFailure;
import putback.store.sheets.EventLines;
import putback.store.sheets.EventsRead;
import putback.store.sheets.Fault;

/** The page at the car, and what its devices send and hear. */
public final class CarsidePages implements PageGroup {
    private static final String LINES = "application/x-ndjson";
    private static final int MOST_EVENTS = 1000;
    private static final int LONGEST = 2000;
    /** A garage's clock that is further from this machine's was set so on purpose. */
    private static final Duration DAY = Duration.ofDays(1);

    private final Replies replies;
    private final Garage garage;
    private final Shelf shelf;
    private @Nullable EventStreams streams;

    public CarsidePages(Replies replies, Garage garage, Shelf shelf) {
        this.replies = replies;
        this.garage = garage;
        this.shelf = shelf;
    }

    @Override
    public void add(RoutesConfig routes) {
        Books books = garage.books();
        if (books == null) {
            return;
        }
        Events events = new Events(books);
        CarsideFiles.add(routes);
        routes.get("/job/{id}/carside", context -> page(context, books));
        routes.get("/job/{id}/carside.json", context -> data(context, books, events));
        routes.post("/job/{id}/events", context -> receive(context, books, events));
        routes.get("/job/{id}/events", context -> since(context, books, events));
        EventStreams following = new EventStreams(books, events);
        streams = following;
        routes.sse("/job/{id}/events/stream", client -> follow(client, books, following));
        routes.post("/job/{id}/heard", context -> hear(context, books));
    }

    @Override
    public void close() {
        if (streams != null) {
            streams.close();
        }
    }

    private void page(Context context, Books books) {
        String id = context.pathParam("id");
        new Jobs(books)
                .find(id)
                .ifPresentOrElse(
                        job -> replies.page(
                                context,
                                replies.pages()
                                        .fill(
                                                "carside.jte",
                                                Map.of("job", job.id(), "number", job.number(), "me", me(context)))),
                        () -> replies.missing(context, "job", id));
    }

    /** Who is signed in; empty where nobody signs in, and the device is told a name. */
    private static String me(Context context) {
        Visitor visitor = Visitor.of(context);
        return visitor.isSignedIn() ? visitor.name() : "";
    }

    private void data(Context context, Books books, Events events) {
        String id = context.pathParam("id");
        CarsideJob.Found found = CarsideJob.find(books, events, shelf, id);
        if (found instanceof CarsideJob.Found.Not not) {
            refuse(context, not.because().status(), not.because().lines());
            return;
        }
        CarsideJob here = ((CarsideJob.Found.Here) found).job();
        boolean invented =
                Duration.between(garage.clock().instant(), Instant.now()).abs().compareTo(DAY) > 0;
        json(
                context,
                CarsideJson.of(here, garage.tray(here.plan()), books.now(), invented, new HeardDevices(books).of(id)));
    }

    private void receive(Context context, Books books, Events events) {
        String type = context.contentType();
        if (type == null || !type.startsWith(LINES)) {
            refuse(context, 415, List.of("Events come as lines of JSON, with the content type " + LINES + "."));
            return;
        }
        EventsRead read = EventLines.read("events", context.body());
        List<String> wrong = wrong(read);
        if (!wrong.isEmpty()) {
            refuse(context, 422, wrong);
            return;
        }
        try {
            String id = context.pathParam("id");
            Visitor visitor = Visitor.of(context);
            Believed believed = new Believed(visitor, visitor.isSignedIn() ? events.all(id) : List.of());
            Received received = events.append(id, believed.all(((EventsRead.Sound) read).events()));
            if (received instanceof Received.Kept kept) {
                new LookedUp(books, shelf).keep(id, kept.merged().appended());
                shelf.learn(id);
                json(context, ReceivedJson.of(kept, books.now()));
            } else {
                refuse(context, 404, List.of("There is no such job any more; the steps stay on the device."));
            }
        } catch (StoreFailure failure) {
            refuse(context, 503, List.of(String.valueOf(failure.getMessage())));
        }
    }

    private static List<String> wrong(EventsRead read) {
        List<String> wrong = new ArrayList<>();
        if (read instanceof EventsRead.Faulty faulty) {
            for (Fault fault : faulty.faults()) {
                wrong.add(fault.toString());
            }
            return wrong;
        }
        List<Event> events = ((EventsRead.Sound) read).events();
        if (events.isEmpty() || events.size() > MOST_EVENTS) {
            wrong.add("A batch has 1 to " + MOST_EVENTS + " events, not " + events.size() + ".");
        }
        for (int i = 0; i < events.size(); i++) {
            String fault = wrong(events.get(i));
            if (!fault.isEmpty()) {
                wrong.add("events:" + (i + 1) + ": " + fault);
            }
        }
        return wrong;
    }

    private static String wrong(Event event) {
        String id = event.id();
        if (id == null || event.at() == null || event.by().isEmpty()) {
            return "an event from a device needs id, at and by";
        }
        if (event.signature().device().isEmpty() || event.signature().seq() == null) {
            return "an event from a device needs device and seq, its running number there";
        }
        for (String text :
                new String[] {id, event.by(), event.signature().device(), event.reason(), event.untorqued()}) {
            if (text != null && text.length() > LONGEST) {
                return "a text is longer than " + LONGEST + " characters; make it shorter";
            }
        }
        return "";
    }

    private static void since(Context context, Books books, Events events) {
        String id = context.pathParam("id");
        int number = number(context.queryParam("since"));
        if (new Jobs(books).find(id).isEmpty()) {
            refuse(context, 404, List.of("There is no such job."));
        } else if (number < 0) {
            refuse(context, 400, List.of("since is the number of an event, 0 for all."));
        } else {
            StringBuilder lines = new StringBuilder();
            for (KeptEvent kept : events.since(id, number)) {
                lines.append(EventStreams.line(kept)).append('\n');
            }
            context.contentType(LINES).result(lines.toString());
        }
    }

    private static void follow(SseClient client, Books books, EventStreams streams) {
        String id = client.ctx().pathParam("id");
        String after = client.ctx().header("Last-Event-ID");
        int number = number(after == null ? client.ctx().queryParam("since") : after);
        if (new Jobs(books).find(id).isPresent()) {
            streams.follow(client, id, Math.max(0, number));
        }
    }

    /** Below 0 for what is no number of an event. */
    private static int number(@Nullable String text) {
        if (text == null) {
            return 0;
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException none) {
            return -1;
        }
    }

    /** What a device says of itself; in the same answer it hears what this garage's clock says. */
    private static void hear(Context context, Books books) {
        String id = context.pathParam("id");
        Map<String, String> said = Replies.sent(context);
        String device = said.getOrDefault("device", "");
        int unsent = number(said.get("unsent"));
        if (device.isEmpty()
                || device.length() > 64
                || unsent < 0
                || new Jobs(books).find(id).isEmpty()) {
            refuse(context, 400, List.of("A device says its job, its name and how many steps it holds back."));
            return;
        }
        String by = me(context).isEmpty() ? said.getOrDefault("by", "") : me(context);
        Heard heard = new Heard(
                id, device, by.substring(0, Math.min(by.length(), 64)), "", unsent, ahead(said.get("clock"), books));
        books.write(change -> {
            new HeardDevices(books).hear(change, heard);
            return id;
        });
        json(
                context,
                new JsonWriter(60)
                        .beginObject()
                        .key("now")
                        .value(books.now())
                        .endObject()
                        .toString());
    }

    private static long ahead(@Nullable String clock, Books books) {
        try {
            return clock == null
                    ? 0
                    : Duration.between(books.clock().instant(), Instant.parse(clock))
                            .toSeconds();
        } catch (DateTimeParseException none) {
            return 0;
        }
    }

    private static void json(Context context, String body) {
        context.contentType("application/json; charset=utf-8").result(body);
    }

    private static void refuse(Context context, int status, List<String> lines) {
        context.attribute(Replies.TOLD, true);
        context.status(status);
        json(
                context,
                new JsonWriter(200)
                        .beginObject()
                        .key("faults")
                        .strings(lines)
                        .endObject()
                        .toString());
    }
}
