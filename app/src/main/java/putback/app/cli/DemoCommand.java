package putback.app.cli;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import putback.app.demo.BigGarage;
import putback.app.demo.DemoGarage;
import putback.store.books.Cars;
import putback.tightening.toolbox.Toolbox;

/** The demonstration: an invented van, its plan and its page. */
final class DemoCommand implements Command {
    private static final String SHEET = "demo-van";
    private static final String RENEW = "spring,damper,pads";
    private static final String DAY = "2026-11-02";
    private static final int LARGE = 100;
    private static final String PAGE = "/plan?sheet=demo-van&renew=spring&renew=damper&renew=pads&side=both";

    @Override
    public Usage usage() {
        return new Usage(
                "demo",
                "Prints the demonstration's plan and serves it as a page.",
                List.of(),
                List.of(
                        Option.flag("--print", "only print"),
                        Option.flag("--big", "with 2,000 cars and 10,000 jobs in the books"),
                        BooksPlace.DATA,
                        ServeCommand.PORT));
    }

    @Override
    public String more() {
        return """
                An invented van failed its yearly inspection: one rear spring broken, both rear dampers leaking, the rear
                pads nearly due. The same as:
                putback plan demo-van --renew spring,damper,pads --toolbox demo --on 2026-11-02
                The pages are those of an invented garage on that day, with a few jobs in its books; without --data the
                books are made anew each time.
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
        Instant morning = Instant.parse(DAY + "T09:00:00Z");
        Clock clock = Clock.offset(Clock.systemUTC(), Duration.between(Instant.now(), morning));
        BooksPlace place =
                arguments.has(BooksPlace.DATA.name()) ? BooksPlace.of("demo", arguments) : BooksPlace.passing();
        boolean big = arguments.has("--big");
        return Serving.withBooks(port, place, toolbox, clock, PAGE, terminal, books -> {
            DemoGarage.fill(books);
            if (big && new Cars(books).search("", LARGE).size() < LARGE) {
                BigGarage.fill(books, 2000, 10_000, 1);
            }
        });
    }
}
