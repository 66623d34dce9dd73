package putback.store.sheets;

import org.jspecify.annotations.Nullable;

/** Where else than among the stock sheets a base is looked for: what a garage has kept. */
public interface KeptTexts {
    /** Nothing is kept. */
    KeptTexts NONE = id -> null;

    /** The text of a sheet by its id; null where there is none. */
    @Nullable
    String text(String id);
}
