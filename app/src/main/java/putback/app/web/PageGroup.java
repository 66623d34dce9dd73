package putback.app.web;

import io.javalin.config.RoutesConfig;

/** Pages that belong together. */
interface PageGroup {
    /** Says which addresses are theirs. */
    void add(RoutesConfig routes);

    /** Ends what they keep running. */
    default void close() {}
}
