package putback.store.books;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jspecify.annotations.Nullable;
import putback.store.database.Change;

/** The book of cars. */
public final class Cars {
    private static final String COLUMNS =
            "id, customer, plate, vin, make, model, built, distance_unit, locking_key, note, version";
    private static final int MOST_ALIKE = 50;
    private static final RowMapper<Car> ROW = (row, context) -> {
        String customer = row.getString("customer");
        return new Car(
                row.getString("id"),
                customer == null ? "" : customer,
                row.getString("plate"),
                row.getString("vin"),
                row.getString("make"),
                row.getString("model"),
                row.getString("built"),
                row.getString("distance_unit"),
                row.getString("locking_key"),
                row.getString("note"),
                row.getInt("version"));
    };

    private final Books books;

    public Cars(Books books) {
        this.books = books;
    }

    /** The one with this id. */
    public Optional<Car> find(String id) {
        return books.read(handle -> find(handle, id));
    }

    private Optional<Car> find(Handle handle, String id) {
        return handle.createQuery("select " + COLUMNS + " from car where garage = :garage and id = :id")
                .bind("garage", books.garage())
                .bind("id", id)
                .map(ROW)
                .findFirst();
    }

    /** Those of one customer, by plate. */
    public List<Car> ofCustomer(String customer) {
        return books.read(handle -> handle.createQuery("select " + COLUMNS
                        + " from car where garage = :garage and customer = :customer order by plate, id")
                .bind("garage", books.garage())
                .bind("customer", customer)
                .map(ROW)
                .list());
    }

    /** Those whose plate has the same letters and digits, whatever stands between them; none for an empty plate. */
    public List<Car> withPlate(String plate) {
        String run = Searched.run(plate);
        List<Car> same = new ArrayList<>();
        if (!run.isEmpty()) {
            for (Car car : search(run, MOST_ALIKE)) {
                if (Searched.run(car.plate()).equals(run)) {
                    same.add(car);
                }
            }
        }
        return same;
    }

    /** Those that have all the words in plate, VIN, make, model or their owner's name, by plate. */
    public List<Car> search(String typed, int most) {
        List<String> words = Searched.words(typed);
        return books.read(handle -> Matching.all(
                        handle, "select " + COLUMNS + " from car where garage = :garage", words, "plate, id", most)
                .bind("garage", books.garage())
                .map(ROW)
                .list());
    }

    /** Keeps one: a new one when its id is empty, else over the version that was read. */
    public Saved<Car> save(Change change, Car car) {
        boolean isNew = car.id().isEmpty();
        String id = isNew ? books.newId() : car.id();
        String statement = isNew
                ? "insert into car (id, garage, customer, plate, vin, make, model, built, distance_unit, locking_key,"
                        + " note, search) values (:id, :garage, :customer, :plate, :vin, :make, :model, :built,"
                        + " :unit, :key, :note, :search)"
                : "update car set customer = :customer, plate = :plate, vin = :vin, make = :make, model = :model,"
                        + " built = :built, distance_unit = :unit, locking_key = :key, note = :note,"
                        + " search = :search, version = version + 1"
                        + " where garage = :garage and id = :id and version = " + car.version();
        String owner = owner(change.handle(), car.customer());
        int rows = bound(change.handle().createUpdate(statement), car, owner)
                .bind("id", id)
                .execute();
        change.tell("car:" + id);
        return Outcome.of(rows, find(change.handle(), id));
    }

    private String owner(Handle handle, String customer) {
        return handle.createQuery("select name from customer where garage = :garage and id = :id")
                .bind("garage", books.garage())
                .bind("id", customer)
                .mapTo(String.class)
                .findFirst()
                .orElse("");
    }

    private <S extends SqlStatement<S>> S bound(S statement, Car car, String owner) {
        @Nullable String customer = car.customer().isEmpty() ? null : car.customer();
        return statement
                .bind("garage", books.garage())
                .bind("customer", customer)
                .bind("plate", car.plate())
                .bind("vin", car.vin())
                .bind("make", car.make())
                .bind("model", car.model())
                .bind("built", car.built())
                .bind("unit", car.distanceUnit())
                .bind("key", car.lockingKey())
                .bind("note", car.note())
                .bind(
                        "search",
                        Searched.text(car.plate(), car.make(), car.model(), owner) + " " + Searched.run(car.plate())
                                + " " + Searched.run(car.vin()));
    }
}
