package putback.store.books;

import java.util.Optional;

/** Reads what an update over a version did. */
final class Outcome {
    private Outcome() {}

    static <T> Saved<T> of(int rows, Optional<T> now) {
        if (now.isEmpty()) {
            return new Saved.Gone<>();
        }
        return rows == 1 ? new Saved.Done<>(now.get()) : new Saved.Overtaken<>(now.get());
    }
}
