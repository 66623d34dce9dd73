package putback.app.cli;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import putback.tightening.toolbox.Toolbox;

/** Serves the pages on this machine. */
final class ServeCommand implements Command {
    static final Option PORT = Option.value("--port", "N", "where to listen, 0 for any free port; " + Serving.PORT);

    @Override
    public Usage usage() {
        return new Usage(
                "serve",
                "Keeps the garage's books, and shows them and the plans as pages on this machine.",
                List.of(),
                List.of(BooksPlace.DATA, BooksPlace.DATABASE, ToolboxFile.TOOLBOX, PORT));
    }

    @Override
    public String more() {
        return """
                Only this machine can reach the pages, and no page asks anything of another one. Ctrl-C ends it.
                The books are made on the first start; a second putback serve may work on the same ones.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        int port = Serving.port("serve", arguments);
        BooksPlace place = BooksPlace.of("serve", arguments);
        Toolbox toolbox = null;
        if (arguments.has("--toolbox")) {
            toolbox = ToolboxFile.open(arguments.value("--toolbox").orElse(""), terminal);
            if (toolbox == null) {
                return Exit.BAD_INPUT;
            }
        }
        return Serving.withBooks(port, place, toolbox, Clock.system(ZoneId.systemDefault()), "/", terminal);
    }
}
