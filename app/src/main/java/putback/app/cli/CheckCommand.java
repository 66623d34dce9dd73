package putback.app.cli;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import putback.plan.selection.NeverApart;
import putback.sheet.Assembly;
import putback.sheet.Doubts;
import putback.sheet.Joint;
import putback.sheet.LoneParts;
import putback.sheet.SpringDoubts;
import putback.store.sheets.Read;

/** Says whether a sheet is sound. */
final class CheckCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage(
                "check",
                "Says whether a sheet can be used, or everything that is wrong with it.",
                List.of("SHEET"),
                List.of());
    }

    @Override
    public String more() {
        return """
                SHEET is a file or the id of a stock sheet. Each fault has its line: FILE:LINE:COLUMN: what is wrong.
                A torque, thread or hexagon that can hardly be right is told as doubtful, and so is a spring that the sheet
                does not take out, or let go slack, before what holds it is opened; that is no fault. Nor is a part that can
                never come off, such as two that lie in each other's way: it is told as never apart, with what locks it.
                Exit code 0 when there is no fault, 2 when there are some.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) {
        Read.Sheet sheet = SheetFile.open(arguments.operands().get(0), terminal);
        if (sheet == null) {
            return Exit.BAD_INPUT;
        }
        Assembly assembly = sheet.assembly();
        List<String> locked = NeverApart.of(assembly);
        terminal.out()
                .println(sheet.name() + (locked.isEmpty() ? ": sound; " : ": no fault, but not all of it comes apart; ")
                        + counted(assembly.parts().size() - 1, "part") + ", "
                        + counted(assembly.joints().size(), "joint") + ", "
                        + counted(assembly.units().size(), "unit")
                        + (assembly.sided() ? ", both sides counted" : ""));
        for (String parts : locked) {
            terminal.say("never apart: " + parts);
        }
        doubts(assembly, terminal);
        return Exit.DONE;
    }

    /** What is the same on both sides is said once. */
    private static void doubts(Assembly assembly, Terminal terminal) {
        Set<String> said = new LinkedHashSet<>();
        for (Joint joint : assembly.joints()) {
            for (String doubt : Doubts.of(joint.fastener())) {
                said.add("doubtful: joint " + joint.entry().id() + ": " + doubt);
            }
        }
        for (String doubt : LoneParts.of(assembly)) {
            said.add("doubtful: " + doubt);
        }
        for (String doubt : SpringDoubts.of(assembly)) {
            said.add("doubtful: " + doubt);
        }
        said.forEach(terminal::say);
    }

    private static String counted(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
