package putback.quantity;

import java.util.function.Consumer;
import java.util.function.Function;

/** What came of reading a text: a value, or a sentence that says what is wrong with it and what would be right. */
public sealed interface Parsed<T> {
    record Value<T>(T value) implements Parsed<T> {
        @Override
        public <R> Parsed<R> map(Function<? super T, ? extends R> change) {
            return new Value<>(change.apply(value));
        }

        @Override
        public T or(T otherwise, Consumer<String> onRefusal) {
            return value;
        }

        @Override
        public String refusal() {
            return "";
        }
    }

    /**
     * @param message one line, without a full stop
     */
    record Refused<T>(String message) implements Parsed<T> {
        @Override
        public <R> Parsed<R> map(Function<? super T, ? extends R> change) {
            return new Refused<>(message);
        }

        @Override
        public T or(T otherwise, Consumer<String> onRefusal) {
            onRefusal.accept(message);
            return otherwise;
        }

        @Override
        public String refusal() {
            return message;
        }
    }

    <R> Parsed<R> map(Function<? super T, ? extends R> change);

    /** What is wrong with the text; nothing where it has a value. */
    String refusal();

    /** The value; or, after the refusal was told, what to go on with instead. */
    T or(T otherwise, Consumer<String> onRefusal);
}
