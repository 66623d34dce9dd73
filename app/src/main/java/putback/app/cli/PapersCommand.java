package putback.app.cli;

import java.util.List;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.Wanted;
import putback.store.sheets.Read;

/** Papers that a plan alone can fill. */
final class PapersCommand implements Command {
    static final String NAME = "papers";
    private static final String KIND = "--kind";
    private static final List<String> KINDS = List.of("job-card", "labels", "fill-in", "tightening-record");

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "Prints a job's papers as PDF: job card, bag labels, fill-in card, tightening record.",
                List.of("SHEET"),
                List.of(
                        Renewing.RENEW,
                        Renewing.SIDE,
                        Option.value(KIND, "KIND", "job-card, labels, fill-in or tightening-record"),
                        PaperOptions.PDF,
                        Option.value("--paper", "a4|letter|roll", "a4 if not said; roll is for labels"),
                        Option.value("--job", "NUMBER", "the job's number, on every paper"),
                        Option.value("--on", "DATE", "day on the paper; left blank if not said")));
    }

    @Override
    public String more() {
        return """
                Labels are for sheets of 3 x 8 on A4 (70 x 37 mm), 3 x 10 on Letter
                (2 5/8 x 1 in), or a roll of 62 x 29 mm, in the order in which things come off.
                The fill-in card is for writing down at the car what the sheet still lacks.

                The estimate is putback price --pdf FILE.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        Renewing renewing = Renewing.of(NAME, arguments);
        String kind = kind(arguments);
        Read.Sheet sheet = SheetFile.open(arguments.operands().get(0), terminal);
        Wanted wanted = sheet == null ? null : renewing.on(sheet.assembly(), sheet.name(), terminal);
        if (sheet == null || wanted == null) {
            return Exit.BAD_INPUT;
        }
        Planned planned = Planner.plan(sheet.assembly(), wanted);
        if (planned instanceof Planned.Locked locked) {
            terminal.say("putback: " + sheet.name() + ": " + locked.sentence());
            return Exit.NO_SOUND_ANSWER;
        }
        Plan plan = ((Planned.Sound) planned).plan();
        return PlanPaper.write(NAME, kind, plan, null, arguments, terminal);
    }

    /** Which paper it is to be; all that is wrong with the options is told before a sheet is read. */
    private static String kind(Arguments arguments) throws UsageFault {
        String kind = arguments.value(KIND).orElse("");
        if (!KINDS.contains(kind)) {
            throw Renewing.fault(
                    NAME, KIND + " is " + String.join(", ", KINDS) + (kind.isEmpty() ? "" : ", not \"" + kind + "\""));
        }
        if (!arguments.has(PaperOptions.PDF.name())) {
            throw Renewing.fault(NAME, "say where to: --pdf FILE");
        }
        boolean roll = arguments.value("--paper").orElse("").equals("roll");
        if (roll && !kind.equals("labels")) {
            throw Renewing.fault(NAME, "--paper roll is for labels; a " + kind + " is on a4 or letter");
        }
        PaperOptions.check(NAME, arguments);
        return kind;
    }
}
