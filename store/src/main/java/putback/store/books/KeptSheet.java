package putback.store.books;

/**
 * A sheet of the garage's own, for all cars of a model. It is never altered, since cars are built on it.
 *
 * @param id by which other sheets name it as their base
 * @param text a sheet in YAML
 */
public record KeptSheet(String id, String title, String text, String at, String by) {}
