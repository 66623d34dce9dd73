package putback.app.cli;

import putback.app.asking.Given;

/** What was typed after the command, as values to be read. */
final class Typed {
    private static final String DASH = "--";

    private Typed() {}

    static Given in(Arguments arguments) {
        return new Given(name -> arguments.value(DASH + name).orElse(null), DASH);
    }
}
