package putback.app.cli;

import java.util.List;
import putback.app.json.OwingJson;
import putback.app.text.HandoverText;
import putback.app.text.OwingText;
import putback.app.text.Screen;
import putback.ledger.Handover;
import putback.ledger.Standing;
import putback.store.sheets.OwingRead;
import putback.store.sheets.OwingReader;

/** What a job still owes, by its plan and by what was done. */
final class OwingCommand implements Command {
    private static final String NAME = "owing";

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "Says what a job still owes, by its plan and by what was done.",
                List.of(),
                List.of(
                        Option.value("--plan", "PLAN.json", "as putback plan --json writes it"),
                        Option.value("--ledger", "EVENTS.jsonl", "what was done, one JSON object a line"),
                        Option.flag("--state", "how the car stands, what must not be done, and the next step"),
                        Option.flag("--json", "for other programs")));
    }

    @Override
    public String more() {
        return """
                An event says what was done: {"at": "2026-03-02T09:14:05Z", "by": "M", "do": "tighten", "joint":
                "left.strut-to-hub", "torqueNm": 98, "height": "raised"}. docs/owing.md has the words.
                What was written down by mistake is taken back by {"do": "correct", "corrects": "its id", "reason": "why"}.
                Exit code 0 when nothing is owed, 4 when something is, 2 when a file cannot be read.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        for (String option : List.of("--plan", "--ledger")) {
            if (!arguments.has(option)) {
                throw Renewing.fault(NAME, option + " is missing; it names a file");
            }
        }
        OwingRead read = OwingReader.read(
                arguments.value("--plan").orElse(""),
                arguments.value("--ledger").orElse(""));
        if (read instanceof OwingRead.Faulty faulty) {
            FaultLines.say(faulty.faults(), "a plan's JSON and a file of events", terminal);
            return Exit.BAD_INPUT;
        }
        OwingRead.Sound sound = (OwingRead.Sound) read;
        Standing standing = Standing.of(sound.promised(), sound.events());
        if (arguments.has("--json")) {
            terminal.out().println(OwingJson.of(standing));
        } else {
            if (arguments.has("--state")) {
                terminal.out().println(HandoverText.of(Handover.of(standing), Screen.here()));
            }
            terminal.out().print(OwingText.of(standing.owing(), sound.promised(), Screen.here()));
        }
        return standing.owing().isSettled() ? Exit.DONE : Exit.OWES;
    }
}
