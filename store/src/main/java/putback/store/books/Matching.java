package putback.store.books;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Statements that find rows whose search text has every word of a question. */
final class Matching {
    private Matching() {}

    /** Words are bound, never joined into the statement; they hold letters and digits only, so none is a pattern. */
    static Query all(Handle handle, String select, List<String> words, String order, int most) {
        StringBuilder statement = new StringBuilder(select);
        for (int i = 0; i < words.size(); i++) {
            statement.append(" and search like :word").append(i);
        }
        statement.append(" order by ").append(order).append(" limit :most");
        Query query = handle.createQuery(statement.toString()).bind("most", most);
        for (int i = 0; i < words.size(); i++) {
            query.bind("word" + i, "%" + words.get(i) + "%");
        }
        return query;
    }
}
