package putback.app.cli;

import java.time.LocalDate;
import java.util.List;
import putback.app.json.ToolboxJson;
import putback.app.text.Screen;
import putback.app.text.ToolboxText;
import putback.tightening.toolbox.Toolbox;

/** What is in a toolbox, and which wrench is due. */
final class ToolboxCommand implements Command {
    private static final String NAME = "toolbox";

    @Override
    public Usage usage() {
        return new Usage(
                NAME,
                "Lists the garage's tools and says which torque wrench is due for calibration.",
                List.of("FILE"),
                List.of(ToolboxFile.ON, Option.flag("--json", "for other programs")));
    }

    @Override
    public String more() {
        return """
                FILE is a toolbox as docs/toolbox.md describes it, or demo for an example. Each fault has its line.
                A wrench is due 12 months or 5000 operations after its calibration, and at once after a drop, unless the
                toolbox says otherwise. putback plan SHEET --renew PART --toolbox FILE holds a job against it.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        LocalDate on = ToolboxFile.on(NAME, arguments);
        Toolbox toolbox = ToolboxFile.open(arguments.operands().get(0), terminal);
        if (toolbox == null) {
            return Exit.BAD_INPUT;
        }
        if (arguments.has("--json")) {
            terminal.out().println(ToolboxJson.of(toolbox, on));
        } else {
            terminal.out().print(ToolboxText.of(toolbox, on, Screen.here()));
        }
        return Exit.DONE;
    }
}
