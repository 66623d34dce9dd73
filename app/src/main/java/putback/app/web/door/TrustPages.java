package putback.app.web.door;

import io.javalin.config.RoutesConfig;
import putback.app.access.Network;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;

/** How a phone learns to trust this server: once, by hand. */
public final class TrustPages implements PageGroup {
    private final Replies replies;
    private final Network network;

    public TrustPages(Replies replies, Network network) {
        this.replies = replies;
        this.network = network;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(
                "/trust",
                context -> replies.show(context, "trust.jte", network.identity().fingerprint()));
        routes.get("/authority.crt", context -> context.contentType("application/x-x509-ca-cert")
                .header("Content-Disposition", "attachment; filename=\"putback-garage.crt\"")
                .result(network.identity().certificate()));
    }
}
