package putback.app.cli;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import putback.app.access.Network;
import putback.tightening.toolbox.Toolbox;

/** Serves the pages on this machine. */
final class ServeCommand implements Command {
    static final Option PORT = Option.value("--port", "N", "where to listen, 0 for any free port; " + Serving.PORT);

    private static final Option LAN =
            Option.flag("--lan", "serve the garage's network too: HTTPS, and everybody signs in");
    private static final Option HOST =
            Option.values("--host", "NAME", "with --lan: another name or address by which this machine is called");

    @Override
    public Usage usage() {
        return new Usage(
                "serve",
                "Keeps the garage's books, and shows them and the plans as pages on this machine.",
                List.of(),
                List.of(BooksPlace.DATA, BooksPlace.DATABASE, BooksPlace.GARAGE, ToolboxFile.TOOLBOX, PORT, LAN, HOST));
    }

    @Override
    public String more() {
        return """
                Only this machine can reach the pages, and no page asks anything of another one. Ctrl-C ends it.
                --lan opens them to the network, to people named with putback person; docs/access.md says what that guards against.
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
        Clock clock = Clock.system(ZoneId.systemDefault());
        if (!arguments.has("--lan")) {
            if (arguments.has("--host")) {
                throw Renewing.fault("serve", "--host goes with --lan");
            }
            return Serving.withBooks(port, place, toolbox, clock, "/", terminal);
        }
        for (String name : arguments.values("--host")) {
            if (!Network.isName(name)) {
                throw Renewing.fault("serve", "--host \"" + name + "\" is not the name of a machine");
            }
        }
        return ServingNetwork.withBooks(port, place, toolbox, clock, arguments.values("--host"), terminal);
    }
}
