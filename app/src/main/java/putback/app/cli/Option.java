package putback.app.cli;

import org.jspecify.annotations.Nullable;

/**
 * An option of a command.
 *
 * @param name with its two hyphens, such as {@code --rust}
 * @param label what stands for its value in the help, null when it takes none
 * @param about one line for the help
 * @param repeats whether it may be given several times
 */
public record Option(String name, @Nullable String label, String about, boolean repeats) {

    /** An option that is there or not. */
    public static Option flag(String name, String about) {
        return new Option(name, null, about, false);
    }

    /** An option with a value. */
    public static Option value(String name, String label, String about) {
        return new Option(name, label, about, false);
    }

    /** An option with a value that may be given several times. */
    public static Option values(String name, String label, String about) {
        return new Option(name, label, about, true);
    }

    String spelling() {
        return label == null ? name : name + " " + label;
    }
}
