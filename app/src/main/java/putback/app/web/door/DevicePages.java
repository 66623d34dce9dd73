package putback.app.web.door;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.Objects;
import putback.app.access.Network;
import putback.app.papers.QrCode;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Visitor;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.Devices;

/** Phones and tablets that are paired with the garage: the owner's. */
public final class DevicePages implements PageGroup {
    private static final Duration CODE_HOLDS = Duration.ofMinutes(10);

    private final Replies replies;
    private final Books books;
    private final Network network;

    public DevicePages(Replies replies, Books books, Network network) {
        this.replies = replies;
        this.books = books;
        this.network = network;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/devices", context -> show(context, "", ""));
        routes.post("/devices", this::code);
        routes.post("/devices/{id}/end", this::end);
    }

    private void show(Context context, String address, String picture) {
        replies.show(
                context,
                "devices.jte",
                new DeviceView(
                        new Devices(books).all(),
                        address,
                        picture,
                        network.identity().fingerprint()));
    }

    private void code(Context context) {
        String by = Objects.requireNonNull(Visitor.of(context).person()).id();
        String code = books.write(change -> new Devices(books).code(change, by, CODE_HOLDS));
        String address = place(context) + "/pair/" + code;
        show(context, address, QrCode.svg(address));
    }

    /** As a phone reaches it: the name by which the owner came is of no use to a phone when it means "this machine". */
    private String place(Context context) {
        String host = String.valueOf(context.host());
        int colon = host.lastIndexOf(':');
        String port = colon > host.lastIndexOf(']') ? host.substring(colon) : "";
        boolean here = host.startsWith("localhost") || host.startsWith(Network.LOOPBACK);
        return "https://" + (here ? network.forPhones() + port : host);
    }

    private void end(Context context) {
        String id = context.pathParam("id");
        Form form = Form.of(context);
        books.write(change -> {
            new Devices(books).end(change, id);
            new Audit(books).add(change, form.who(), "", "device ended", Visitor.named(id));
            return id;
        });
        context.redirect("/devices", HttpStatus.SEE_OTHER);
    }
}
