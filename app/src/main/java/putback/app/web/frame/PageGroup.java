package putback.app.web.frame;

import io.javalin.config.RoutesConfig;

/** Pages that belong together. */
public interface PageGroup {
    /** Says which addresses are theirs. */
    void add(RoutesConfig routes);

    /** Ends what they keep running. */
    default void close() {}
}
