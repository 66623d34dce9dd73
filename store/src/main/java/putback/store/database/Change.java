package putback.store.database;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** One change of the books, while it is made. */
public final class Change {
    private final Handle handle;
    private final Set<String> topics = new LinkedHashSet<>();

    Change(Handle handle) {
        this.handle = handle;
    }

    /** Where statements go. */
    public Handle handle() {
        return handle;
    }

    /**
     * Tells those who listen, after all is on disk.
     *
     * @param topic what changed, such as {@code job:ID}
     */
    public void tell(String topic) {
        topics.add(topic);
    }

    Set<String> topics() {
        return topics;
    }
}
