package putback.app.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import putback.quantity.Shown;
import putback.store.sheets.Fault;
import putback.store.sheets.ToolboxRead;
import putback.store.sheets.ToolboxReader;
import putback.tightening.toolbox.Toolbox;

/** Opens the toolbox that a command is given, and the day it is looked at. */
final class ToolboxFile {
    static final Option TOOLBOX = Option.value("--toolbox", "FILE", "the garage's tools; demo is an example");
    static final Option ON = Option.value("--on", "DATE", "day of the work, on paper and for calibration");
    private static final String DEMO = "demo";

    private ToolboxFile() {}

    /** The toolbox; null when it has faults, which are printed then. */
    static @Nullable Toolbox open(String file, Terminal terminal) {
        ToolboxRead read = file.equals(DEMO) ? ToolboxReader.demo() : ToolboxReader.read(file);
        if (read instanceof ToolboxRead.Sound sound) {
            return sound.toolbox();
        }
        for (Fault fault : ((ToolboxRead.Faulty) read).faults()) {
            terminal.say(fault.toString());
        }
        return null;
    }

    static LocalDate on(String command, Arguments arguments) throws UsageFault {
        String given = arguments.value(ON.name()).orElse("");
        if (!arguments.has(ON.name())) {
            return LocalDate.now(ZoneId.systemDefault());
        }
        try {
            return LocalDate.parse(given);
        } catch (DateTimeException notOne) {
            throw Renewing.fault(command, "--on is a day such as 2026-02-11, not \"" + Shown.text(given) + "\"");
        }
    }
}
