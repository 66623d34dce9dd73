package putback.app.web.door;

import java.util.List;
import putback.store.books.Person;

/**
 * Who may sign in.
 *
 * @param said what went wrong, empty for nothing
 */
public record PeopleView(List<Person> people, String said) {}
