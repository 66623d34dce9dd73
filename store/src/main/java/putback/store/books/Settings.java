package putback.store.books;

import java.util.Map;
import java.util.TreeMap;
import putback.store.database.Change;

/** What a garage has settled once: its name and address, rates, units, paper. */
public final class Settings {
    private final Books books;

    public Settings(Books books) {
        this.books = books;
    }

    /** All, by name. */
    public Map<String, String> all() {
        return books.read(handle -> {
            Map<String, String> values = new TreeMap<>();
            handle.createQuery("select name, value from setting where garage = :garage")
                    .bind("garage", books.garage())
                    .mapToMap()
                    .forEach(row -> values.put((String) row.get("name"), (String) row.get("value")));
            return values;
        });
    }

    /** Keeps one. */
    public void set(Change change, String name, String value) {
        change.handle()
                .createUpdate("insert into setting (garage, name, value) values (:garage, :name, :value)"
                        + " on conflict (garage, name) do update set value = :value, version = setting.version + 1")
                .bind("garage", books.garage())
                .bind("name", name)
                .bind("value", value)
                .execute();
        change.tell("settings");
    }
}
