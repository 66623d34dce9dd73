package putback.store.books;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.RowMapper;
import putback.store.database.Change;

/** Who works in the garage and may sign in. */
public final class People {
    static final RowMapper<Person> ROW = (row, context) -> {
        String password = row.getString("password");
        return new Person(
                row.getString("id"),
                row.getString("name"),
                row.getString("role"),
                password == null ? "" : password,
                row.getInt("active") == 1);
    };

    private final Books books;

    public People(Books books) {
        this.books = books;
    }

    /** All, those who have left too, by name. */
    public List<Person> all() {
        return books.read(handle -> handle.createQuery(
                        "select id, name, role, password, active from person where garage = :garage order by name, id")
                .bind("garage", books.garage())
                .map(ROW)
                .list());
    }

    /** The one of this name, small and capital letters alike. */
    public Optional<Person> named(String name) {
        for (Person person : all()) {
            if (person.name().equalsIgnoreCase(name)) {
                return Optional.of(person);
            }
        }
        return Optional.empty();
    }

    /** The one with this id. */
    public Optional<Person> find(String id) {
        return all().stream().filter(person -> person.id().equals(id)).findFirst();
    }

    /** Whether somebody is there who may change settings and people. */
    public boolean hasOwner() {
        return all().stream().anyMatch(person -> person.active() && person.isOwner());
    }

    /** Adds one; whoever calls has seen that nobody has this name. */
    public void add(Change change, String name, String role, String password) {
        change.handle()
                .createUpdate("insert into person (id, garage, name, role, password)"
                        + " values (:id, :garage, :name, :role, :password)")
                .bind("id", books.newId())
                .bind("garage", books.garage())
                .bind("name", name)
                .bind("role", role)
                .bind("password", password)
                .execute();
    }

    /** Gives another password; who is signed in by the old one no longer is. */
    public void password(Change change, String id, String password) {
        change.handle()
                .createUpdate("update person set password = :password, active = 1, version = version + 1"
                        + " where garage = :garage and id = :id")
                .bind("password", password)
                .bind("garage", books.garage())
                .bind("id", id)
                .execute();
        new Sessions(books).endAllOf(change, id);
    }

    /** Lets one no longer sign in. Their name stays beside what they did. */
    public void leave(Change change, String id) {
        change.handle()
                .createUpdate(
                        "update person set active = 0, version = version + 1" + " where garage = :garage and id = :id")
                .bind("garage", books.garage())
                .bind("id", id)
                .execute();
        new Sessions(books).endAllOf(change, id);
    }
}
