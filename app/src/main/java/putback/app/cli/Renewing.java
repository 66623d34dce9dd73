package putback.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.plan.selection.WantedNames;
import putback.sheet.Assembly;
import putback.sheet.Side;

/** The options that say what is to be renewed, the same for each command that plans. */
final class Renewing {
    static final Option RENEW = Option.values("--renew", "PART-or-UNIT[,...]", "what is renewed: strut, left.strut");
    static final Option SIDE =
            Option.value("--side", "left|right|both", "which side a plain name means; both if not said");

    private static final int LONG = 2 * Columns.WIDTH;

    private final List<String> names;
    private final Set<Side> sides;

    private Renewing(List<String> names, Set<Side> sides) {
        this.names = names;
        this.sides = sides;
    }

    /** Reads both options; what is wrong with them is told without looking at any sheet. */
    static Renewing of(String command, Arguments arguments) throws UsageFault {
        List<String> names = new ArrayList<>();
        for (String value : arguments.values(RENEW.name())) {
            split(value, names);
        }
        if (names.isEmpty()) {
            throw fault(command, "say what is to be renewed: --renew PART-or-UNIT");
        }
        return new Renewing(names, sides(command, arguments));
    }

    /** One for each value of an option that repeats, in order. */
    static List<Renewing> each(String command, Arguments arguments, Option option) throws UsageFault {
        List<Renewing> each = new ArrayList<>();
        for (String value : arguments.values(option.name())) {
            List<String> names = new ArrayList<>();
            split(value, names);
            if (names.isEmpty()) {
                throw fault(command, option.name() + " names nothing; write it like " + option.name() + " strut,link");
            }
            each.add(new Renewing(names, sides(command, arguments)));
        }
        return each;
    }

    private static Set<Side> sides(String command, Arguments arguments) throws UsageFault {
        String side = arguments.value(SIDE.name()).orElse("both");
        return switch (side) {
            case "both" -> Set.of(Side.LEFT, Side.RIGHT);
            case "left" -> Set.of(Side.LEFT);
            case "right" -> Set.of(Side.RIGHT);
            default -> throw fault(command, "--side is left, right or both, not \"" + side + "\"");
        };
    }

    private static void split(String value, List<String> names) {
        int from = 0;
        while (from <= value.length()) {
            int comma = value.indexOf(',', from);
            int to = comma < 0 ? value.length() : comma;
            String name = value.substring(from, to).strip();
            if (!name.isEmpty()) {
                names.add(name);
            }
            from = to + 1;
        }
    }

    /** As they were typed. */
    List<String> names() {
        return names;
    }

    /** What is wanted on this car; null when a name is not understood, which is printed then. */
    @Nullable
    Wanted on(Assembly assembly, String sheet, Terminal terminal) {
        WantedNames.Understood understood = WantedNames.understand(assembly, names, sides);
        if (understood instanceof WantedNames.Understood.Clear clear) {
            if (sides.size() == 1) {
                existOnce(clear.wanted(), sheet, terminal);
            }
            return clear.wanted();
        }
        for (String message : ((WantedNames.Understood.Unclear) understood).messages()) {
            terminal.say(broken("putback: " + sheet + ": " + message));
        }
        return null;
    }

    /** What has no side is renewed all the same, and whoever asked for one hears of it. */
    private static void existOnce(Wanted wanted, String sheet, Terminal terminal) {
        for (Target target : wanted.targets()) {
            if (target.side() == Side.NONE) {
                terminal.say(
                        "putback: " + sheet + ": the " + target.id() + " exists once; --side changes nothing for it");
            }
        }
    }

    /** A long list does not run on in one line. */
    private static String broken(String message) {
        if (message.length() <= LONG) {
            return message;
        }
        StringBuilder lines = new StringBuilder();
        Columns.paragraph(lines, message);
        return lines.toString().stripTrailing();
    }

    static UsageFault fault(String command, String what) {
        return new UsageFault("putback " + command + ": " + what + "\nTry: putback " + command + " --help");
    }
}
