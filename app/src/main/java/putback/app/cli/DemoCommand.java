package putback.app.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import putback.app.web.Garage;
import putback.tightening.toolbox.Toolbox;

/** The demonstration: an invented van, its plan and its page. */
final class DemoCommand implements Command {
    private static final String SHEET = "demo-van";
    private static final String RENEW = "spring,damper,pads";
    private static final String DAY = "2026-11-02";
    private static final String PAGE = "/plan?sheet=demo-van&renew=spring&renew=damper&renew=pads&side=both";

    @Override
    public Usage usage() {
        return new Usage(
                "demo",
                "Prints the demonstration's plan and serves it as a page.",
                List.of(),
                List.of(Option.flag("--print", "only print"), BooksPlace.DATA, ServeCommand.PORT));
    }

    @Override
    public String more() {
        return """
                An invented van failed its yearly inspection: one rear spring broken, both rear dampers leaking, the rear
                pads nearly due. The same as:
                putback plan demo-van --renew spring,damper,pads --toolbox demo --on 2026-11-02
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        int port = Serving.port("demo", arguments);
        int planned =
                Commands.run(List.of("plan", SHEET, "--renew", RENEW, "--toolbox", "demo", "--on", DAY), terminal);
        if (planned != Exit.DONE || arguments.has("--print")) {
            return planned;
        }
        terminal.out().println();
        Toolbox toolbox = ToolboxFile.open("demo", terminal);
        Clock noon = Clock.fixed(Instant.parse(DAY + "T12:00:00Z"), ZoneOffset.UTC);
        return arguments.has(BooksPlace.DATA.name())
                ? Serving.withBooks(port, BooksPlace.of("demo", arguments), toolbox, noon, PAGE, terminal)
                : Serving.on(port, new Garage(toolbox, noon), PAGE, terminal);
    }
}
