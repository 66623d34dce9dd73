package putback.store.books;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Statements that find rows whose search text has every word of a question, or what else that word is called. */
final class Matching {
    private Matching() {}

    static Query all(Handle handle, String select, List<String> words, String order, int most) {
        return all(handle, select, "search", words, order, most);
    }

    /** Words are bound, never joined into the statement; they hold letters and digits only, so none is a pattern. */
    static Query all(Handle handle, String select, String column, List<String> words, String order, int most) {
        StringBuilder statement = new StringBuilder(select);
        Map<String, String> bound = new LinkedHashMap<>();
        for (String word : words) {
            List<String> either = new ArrayList<>();
            for (String alternative : Glossary.alternatives(word)) {
                String name = "word" + bound.size();
                bound.put(name, "%" + alternative + "%");
                either.add(column + " like :" + name);
            }
            statement.append(" and (").append(String.join(" or ", either)).append(')');
        }
        statement.append(" order by ").append(order).append(" limit :most");
        Query query = handle.createQuery(statement.toString()).bind("most", most);
        bound.forEach(query::bind);
        return query;
    }
}
