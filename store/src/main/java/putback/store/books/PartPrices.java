package putback.store.books;

import java.util.List;
import java.util.Locale;
import putback.store.database.Change;

/** The garage's own prices of parts and fluids, model by model. */
public final class PartPrices {
    private static final String OWN = "own ";

    private final Books books;

    public PartPrices(Books books) {
        this.books = books;
    }

    /** Whose prices a car takes: its make and model, or, where nobody has said, this one car. */
    public static String model(Car car) {
        String model = plain(car.make() + " " + car.model());
        return model.isEmpty() ? "car " + car.id() : model;
    }

    /** By what a part of a sheet is found again: the side makes no difference, the name does. */
    public static String part(String id, String name) {
        String side = id.startsWith("left.") ? ", left" : id.startsWith("right.") ? ", right" : "";
        String plainName = name;
        for (String end : List.of(", axle set", ", both sides", side)) {
            if (!end.isEmpty() && plainName.endsWith(end)) {
                plainName = plainName.substring(0, plainName.length() - end.length());
            }
        }
        return "part " + id.substring(id.indexOf('.') + 1) + " " + plain(plainName);
    }

    /** By what a part of the garage's own is found again. */
    public static String own(String name) {
        return OWN + plain(name);
    }

    private static String plain(String words) {
        return words.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** All of a model, by name. */
    public List<PartPrice> of(String model) {
        return books.read(handle -> handle.createQuery("select model, part, name, count, price, by_name from part_price"
                        + " where garage = :garage and model = :model order by name, part")
                .bind("garage", books.garage())
                .bind("model", model)
                .map((row, context) -> new PartPrice(
                        row.getString("model"),
                        row.getString("part"),
                        row.getString("part").startsWith(OWN),
                        row.getString("name"),
                        row.getInt("count"),
                        row.getString("price"),
                        row.getString("by_name")))
                .list());
    }

    /** Keeps one; what was paid before gives way. */
    public void keep(Change change, PartPrice paid) {
        change.handle()
                .createUpdate("insert into part_price (garage, model, part, name, count, price, at, by_name)"
                        + " values (:garage, :model, :part, :name, :count, :price, :at, :by)"
                        + " on conflict (garage, model, part) do update set name = :name, count = :count,"
                        + " price = :price, at = :at, by_name = :by")
                .bind("garage", books.garage())
                .bind("model", paid.model())
                .bind("part", paid.part())
                .bind("name", paid.name())
                .bind("count", paid.count())
                .bind("price", paid.price())
                .bind("at", books.now())
                .bind("by", paid.by())
                .execute();
    }
}
