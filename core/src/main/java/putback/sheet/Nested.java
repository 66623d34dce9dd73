package putback.sheet;

import java.util.ArrayList;
import java.util.List;

/** Lists of lists that nobody can change. */
final class Nested {
    private Nested() {}

    static <T> List<List<T>> copyOf(List<List<T>> lists) {
        if (lists.isEmpty()) {
            return List.of();
        }
        List<List<T>> copies = new ArrayList<>(lists.size());
        for (List<T> list : lists) {
            copies.add(List.copyOf(list));
        }
        return List.copyOf(copies);
    }
}
