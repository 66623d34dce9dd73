package putback.app.web;

import org.jspecify.annotations.Nullable;

/** A customer's address, shown once. */
public record LinkView(String job, @Nullable String host, String path) {}
