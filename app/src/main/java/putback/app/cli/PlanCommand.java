package putback.app.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.json.PlanJson;
import putback.app.ladder.LadderSize;
import putback.app.ladder.LadderSvg;
import putback.app.text.PlanText;
import putback.app.text.Screen;
import putback.app.text.WhyText;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.Wanted;
import putback.plan.tools.Tray;
import putback.store.sheets.Read;
import putback.tightening.toolbox.Toolbox;

/** The round trip to a part and back. */
final class PlanCommand implements Command {
    private static final String NAME = "plan";
    private static final int GRADES = 4;
    private static final int MOST_HANDS = 9;

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "Says what to open for a repair, in which order, and how it goes together again.",
                List.of("SHEET"),
                List.of(
                        Renewing.RENEW,
                        Renewing.SIDE,
                        Option.value("--rust", "0..4", "how rusty it is: what the time comes to with it"),
                        Option.value("--hands", "N", "how many people work on it, 1 to 9: the same"),
                        ToolboxFile.TOOLBOX,
                        ToolboxFile.ON,
                        Option.value("--why", "STEP", "why this step is there; 58-59 for several"),
                        Option.flag("--json", "for other programs"),
                        Option.value("--pdf", "FILE", "the job card as a PDF file"),
                        PaperOptions.PAPER,
                        Option.value("--svg", "FILE", "the ladder as a picture")));
    }

    @Override
    public String more() {
        return PlanHelp.text();
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        Renewing renewing = Renewing.of(NAME, arguments);
        StepRange why = why(arguments);
        int rust = number(arguments, "--rust", 0, GRADES);
        int hands = number(arguments, "--hands", 1, MOST_HANDS);
        oneOf(arguments, "--json", "--pdf", "--svg", "--why");
        if (arguments.value("--svg").orElse("x").isEmpty()) {
            throw Renewing.fault(NAME, "--svg FILE: the name of the file is empty");
        }
        PaperOptions.check(NAME, arguments);
        if (arguments.has("--on") && !arguments.has("--toolbox") && !arguments.has("--pdf")) {
            throw Renewing.fault(NAME, "--on goes with --toolbox FILE or --pdf FILE");
        }
        LocalDate on = arguments.has("--toolbox") ? ToolboxFile.on(NAME, arguments) : null;
        Toolbox toolbox = on == null
                ? null
                : ToolboxFile.open(arguments.value("--toolbox").orElse(""), terminal);
        if (on != null && toolbox == null) {
            return Exit.BAD_INPUT;
        }
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
        String rusty = rust > 0 || hands > 1 ? RustyTime.of(plan, Math.max(rust, 0), Math.max(hands, 1)) : "";
        Tray tray = toolbox == null || on == null ? null : Tray.of(plan, toolbox, on);
        int exit = show(plan, tray, why, arguments, terminal);
        if (!rusty.isEmpty()) {
            tell(rusty, arguments, terminal);
        }
        return exit;
    }

    private static int show(
            Plan plan, @Nullable Tray tray, @Nullable StepRange why, Arguments arguments, Terminal terminal)
            throws UsageFault {
        if (arguments.has("--json")) {
            terminal.out().println(PlanJson.of(plan, tray));
            return Exit.DONE;
        }
        if (arguments.has("--svg")) {
            return draw(
                    plan,
                    arguments.value("--svg").orElse(""),
                    arguments.operands().get(0),
                    terminal);
        }
        if (arguments.has("--pdf")) {
            return PlanPaper.write(NAME, "job-card", plan, tray, arguments, terminal);
        }
        if (why != null && why.last() > plan.steps().size()) {
            terminal.say("putback plan: --why " + why.last() + ": this plan has the steps 1 to "
                    + plan.steps().size());
            return Exit.BAD_INPUT;
        }
        Screen screen = Screen.here();
        if (why == null) {
            terminal.out().print(PlanText.of(plan, tray, screen));
            return Exit.DONE;
        }
        for (int step = why.first(); step <= why.last(); step++) {
            terminal.out().print(WhyText.of(plan, step, screen));
        }
        return Exit.DONE;
    }

    /** Below the plan, or beside what another program reads. */
    private static void tell(String rusty, Arguments arguments, Terminal terminal) {
        StringBuilder text = new StringBuilder("\n");
        Columns.paragraph(text, rusty);
        if (arguments.has("--json") || arguments.has("--pdf") || arguments.has("--svg")) {
            terminal.say("putback: " + rusty);
        } else {
            terminal.out().print(text);
        }
    }

    private static int draw(Plan plan, String name, String sheet, Terminal terminal) {
        if (isSheet(name, sheet)) {
            terminal.say(
                    "putback: " + name + " is a sheet and would be lost; give --svg another name, such as ladder.svg");
            return Exit.BAD_INPUT;
        }
        String drawn = LadderSvg.draw(plan, LadderSize.WIDE);
        try {
            Files.write(Path.of(name), drawn.getBytes(StandardCharsets.UTF_8));
            return Exit.DONE;
        } catch (IOException | InvalidPathException fault) {
            terminal.say("putback: cannot write " + name + ": " + FileFault.said(fault));
            return Exit.FAILED;
        }
    }

    /** Whether the picture would be written over the sheet that is read, or over a file named like one. */
    private static boolean isSheet(String name, String sheet) {
        if (name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json")) {
            return true;
        }
        try {
            return Files.exists(Path.of(sheet))
                    && Files.exists(Path.of(name))
                    && Files.isSameFile(Path.of(sheet), Path.of(name));
        } catch (IOException | InvalidPathException unknown) {
            return false;
        }
    }

    private static void oneOf(Arguments arguments, String... names) throws UsageFault {
        String seen = null;
        for (String name : names) {
            if (arguments.has(name)) {
                if (seen != null) {
                    throw Renewing.fault(NAME, seen + " and " + name + " do not go together; give one of them");
                }
                seen = name;
            }
        }
    }

    private static @Nullable StepRange why(Arguments arguments) throws UsageFault {
        String given = arguments.value("--why").orElse(null);
        StepRange range = given == null ? null : StepRange.read(given);
        if (given != null && range == null) {
            throw Renewing.fault(
                    NAME,
                    "--why is a step number from 1 up, such as 17, or a range such as 58-59, not \"" + given + "\"");
        }
        return range;
    }

    /** The number that goes with an option; the one below the lowest when it is not given. */
    private static int number(Arguments arguments, String name, int lowest, int highest) throws UsageFault {
        String given = arguments.value(name).orElse(null);
        if (given == null) {
            return lowest - 1;
        }
        int number = lowest - 1;
        try {
            number = Integer.parseInt(given);
        } catch (NumberFormatException notOne) {
            // told below, like a number outside
        }
        if (number < lowest || number > highest) {
            throw Renewing.fault(NAME, name + " is " + lowest + " to " + highest + ", not \"" + given + "\"");
        }
        return number;
    }
}
