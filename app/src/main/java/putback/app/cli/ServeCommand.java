package putback.app.cli;

import java.util.List;

/** Serves the pages on this machine. */
final class ServeCommand implements Command {
    static final Option PORT = Option.value("--port", "N", "where to listen, 0 for any free port; " + Serving.PORT);

    @Override
    public Usage usage() {
        return new Usage(
                "serve", "Shows the sheets and their plans as pages on this machine.", List.of(), List.of(PORT));
    }

    @Override
    public String more() {
        return """
                Only this machine can reach the pages, and no page asks anything of another one. Ctrl-C ends it.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        return Serving.on(Serving.port("serve", arguments), "/", terminal);
    }
}
