package putback.app.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a command was called with. */
public final class Arguments {
    static final Arguments HELP = new Arguments(List.of(), Map.of());

    private final List<String> operands;
    private final Map<String, List<String>> options;

    Arguments(List<String> operands, Map<String, List<String>> options) {
        this.operands = List.copyOf(operands);
        this.options = options;
    }

    /** Whether the help was asked for; nothing else is to be read then. */
    public boolean wantsHelp() {
        return this == HELP;
    }

    /** The words that are no options, in order. */
    public List<String> operands() {
        return operands;
    }

    /** Whether the option was given. */
    public boolean has(String name) {
        return options.containsKey(name);
    }

    /** The value of an option, if it was given. */
    public Optional<String> value(String name) {
        List<String> values = options.get(name);
        return values == null ? Optional.empty() : Optional.of(values.get(0));
    }

    /** All values of an option that repeats, none if it was not given. */
    public List<String> values(String name) {
        return List.copyOf(options.getOrDefault(name, List.of()));
    }
}
