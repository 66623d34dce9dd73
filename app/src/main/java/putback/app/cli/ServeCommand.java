package putback.app.cli;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import putback.app.web.Garage;
import putback.tightening.toolbox.Toolbox;

/** Serves the pages on this machine. */
final class ServeCommand implements Command {
    static final Option PORT = Option.value("--port", "N", "where to listen, 0 for any free port; " + Serving.PORT);

    @Override
    public Usage usage() {
        return new Usage(
                "serve",
                "Shows the sheets and their plans as pages on this machine.",
                List.of(),
                List.of(ToolboxFile.TOOLBOX, PORT));
    }

    @Override
    public String more() {
        return """
                Only this machine can reach the pages, and no page asks anything of another one. Ctrl-C ends it.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        int port = Serving.port("serve", arguments);
        if (!arguments.has("--toolbox")) {
            return Serving.on(port, Garage.UNKNOWN, "/", terminal);
        }
        Toolbox toolbox = ToolboxFile.open(arguments.value("--toolbox").orElse(""), terminal);
        return toolbox == null
                ? Exit.BAD_INPUT
                : Serving.on(port, new Garage(toolbox, Clock.system(ZoneId.systemDefault())), "/", terminal);
    }
}
