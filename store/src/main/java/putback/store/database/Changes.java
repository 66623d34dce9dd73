package putback.store.database;

import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/** Who wants to hear that something changed, and the telling. */
public final class Changes {
    /** Told when changes may have been missed: look at everything again. */
    public static final String ALL = "*";

    private final List<Consumer<String>> listeners = new CopyOnWriteArrayList<>();

    /**
     * From now on the listener hears each topic that changes, or {@link #ALL}. It must be quick and must not throw.
     *
     * @return ends it
     */
    public Runnable listen(Consumer<String> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    void tell(Set<String> topics) {
        for (Consumer<String> listener : listeners) {
            topics.forEach(listener);
        }
    }
}
