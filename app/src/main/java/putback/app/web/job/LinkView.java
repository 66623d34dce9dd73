package putback.app.web.job;

import org.jspecify.annotations.Nullable;

/** A customer's address, shown once. */
public record LinkView(String job, @Nullable String host, String path) {}
