package putback.store.books;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.SqlStatement;
import putback.store.database.Change;

/** The book of customers. */
public final class Customers {
    private static final String COLUMNS = "id, name, phone, email, address, note, version";
    private static final RowMapper<Customer> ROW = (row, context) -> new Customer(
            row.getString("id"),
            row.getString("name"),
            row.getString("phone"),
            row.getString("email"),
            row.getString("address"),
            row.getString("note"),
            row.getInt("version"));

    private final Books books;

    public Customers(Books books) {
        this.books = books;
    }

    /** The one with this id. */
    public Optional<Customer> find(String id) {
        return books.read(handle -> find(handle, id));
    }

    private Optional<Customer> find(Handle handle, String id) {
        return handle.createQuery("select " + COLUMNS + " from customer where garage = :garage and id = :id")
                .bind("garage", books.garage())
                .bind("id", id)
                .map(ROW)
                .findFirst();
    }

    /** Those whose name, phone or address has all the words, by name. */
    public List<Customer> search(String typed, int most) {
        List<String> words = Searched.words(typed);
        return books.read(handle -> Matching.all(
                        handle, "select " + COLUMNS + " from customer where garage = :garage", words, "name, id", most)
                .bind("garage", books.garage())
                .map(ROW)
                .list());
    }

    /** Keeps one: a new one when its id is empty, else over the version that was read. */
    public Saved<Customer> save(Change change, Customer customer) {
        if (customer.id().isEmpty()) {
            return new Saved.Done<>(add(change, customer));
        }
        int rows = bound(
                        change.handle()
                                .createUpdate("update customer set name = :name, phone = :phone, email = :email,"
                                        + " address = :address, note = :note, search = :search, version = version + 1"
                                        + " where garage = :garage and id = :id and version = :version"),
                        customer)
                .bind("version", customer.version())
                .execute();
        change.tell("customer:" + customer.id());
        return Outcome.of(rows, find(change.handle(), customer.id()));
    }

    private Customer add(Change change, Customer customer) {
        Customer kept = new Customer(
                books.newId(),
                customer.name(),
                customer.phone(),
                customer.email(),
                customer.address(),
                customer.note(),
                1);
        bound(
                        change.handle()
                                .createUpdate("insert into customer (id, garage, name, phone, email, address, note,"
                                        + " search) values (:id, :garage, :name, :phone, :email, :address, :note,"
                                        + " :search)"),
                        kept)
                .execute();
        return kept;
    }

    private <S extends SqlStatement<S>> S bound(S statement, Customer customer) {
        return statement
                .bind("id", customer.id())
                .bind("garage", books.garage())
                .bind("name", customer.name())
                .bind("phone", customer.phone())
                .bind("email", customer.email())
                .bind("address", customer.address())
                .bind("note", customer.note())
                .bind(
                        "search",
                        Searched.text(customer.name(), customer.phone(), customer.address()) + " "
                                + Searched.run(customer.phone()));
    }
}
