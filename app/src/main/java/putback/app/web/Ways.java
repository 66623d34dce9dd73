package putback.app.web;

import io.javalin.config.JavalinConfig;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.jspecify.annotations.Nullable;
import putback.app.access.Identity;
import putback.app.access.Network;
import putback.app.web.door.Guard;

/** Where the server listens. */
final class Ways {
    private Ways() {}

    /** On the loopback address, or on all over HTTPS; then the page about trust is at the next port without it. */
    static void set(JavalinConfig config, int port, @Nullable Network network) {
        config.http.maxRequestSize = Guard.LONGEST_FORM;
        if (network == null) {
            config.jetty.host = Network.LOOPBACK;
            config.jetty.port = port;
            return;
        }
        config.jetty.addConnector((server, http) -> secure(server, http, network.identity(), port));
        config.jetty.addConnector((server, http) -> {
            ServerConnector plain = new ServerConnector(server, new HttpConnectionFactory(http));
            plain.setPort(port == 0 ? 0 : port + 1);
            return plain;
        });
    }

    private static ServerConnector secure(Server server, HttpConfiguration http, Identity identity, int port) {
        SslContextFactory.Server keys = new SslContextFactory.Server();
        keys.setKeyStore(identity.keys());
        keys.setKeyStorePassword(Identity.PASSWORD);
        keys.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        HttpConfiguration secure = new HttpConfiguration(http);
        secure.addCustomizer(new SecureRequestCustomizer(false));
        ServerConnector connector = new ServerConnector(
                server, new SslConnectionFactory(keys, "http/1.1"), new HttpConnectionFactory(secure));
        connector.setPort(port);
        return connector;
    }
}
