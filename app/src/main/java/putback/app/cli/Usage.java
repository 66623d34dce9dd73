package putback.app.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a command is called with. It reads the arguments and writes the help, so that neither can say what the other
 * does not.
 *
 * <p>Accepted: {@code --name value}, {@code --name=value}, options and operands in any order, {@code --} before
 * operands that start with a hyphen. A value may start with a hyphen: {@code --at -30deg}.
 *
 * @param command its name
 * @param about one line
 * @param operands labels, in order; {@code [FILE]} may be left out, {@code FILE...} is one or more
 * @param options in the order of the help
 */
public record Usage(String command, String about, List<String> operands, List<Option> options) {
    private static final Option HELP = Option.flag("--help", "show this");

    public Usage {
        operands = List.copyOf(operands);
        options = List.copyOf(options);
    }

    /** Reads what follows the command's name. */
    public Arguments read(List<String> words) throws UsageFault {
        Map<String, List<String>> given = new LinkedHashMap<>();
        List<String> found = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            String word = words.get(at++);
            if (word.equals("--")) {
                found.addAll(words.subList(at, words.size()));
                break;
            }
            if (word.equals("--help") || word.equals("-h")) {
                return Arguments.HELP;
            }
            if (word.length() < 2 || word.charAt(0) != '-') {
                found.add(word);
                continue;
            }
            int equals = word.indexOf('=');
            String name = equals < 0 ? word : word.substring(0, equals);
            Option option = option(name);
            String value = "";
            if (option.label() == null) {
                if (equals >= 0) {
                    throw fault(name + " takes no value");
                }
            } else if (equals >= 0) {
                value = word.substring(equals + 1);
            } else if (at < words.size() && find(words.get(at)) == null) {
                value = words.get(at++);
            } else {
                throw fault(option.spelling() + ": the value is missing");
            }
            List<String> values = given.get(name);
            if (values == null) {
                values = new ArrayList<>();
                given.put(name, values);
            }
            if (!values.isEmpty() && !option.repeats()) {
                throw fault(name + " is given twice");
            }
            values.add(value);
        }
        checkOperands(found);
        return new Arguments(found, given);
    }

    private void checkOperands(List<String> found) throws UsageFault {
        boolean many = false;
        for (int i = 0; i < operands.size(); i++) {
            String label = operands.get(i);
            many |= label.endsWith("...");
            if (i >= found.size() && !label.startsWith("[")) {
                throw fault(label + " is missing");
            }
        }
        if (!many && found.size() > operands.size()) {
            throw fault("\"" + found.get(operands.size()) + "\" is one word too many");
        }
    }

    private Option option(String name) throws UsageFault {
        Option option = find(name);
        if (option != null) {
            return option;
        }
        List<String> names = new ArrayList<>();
        for (Option known : options) {
            names.add(known.name());
        }
        String nearest = Spelling.nearest(name, names);
        throw fault("there is no option " + name + (nearest == null ? "" : ". Maybe " + nearest));
    }

    private @Nullable Option find(String name) {
        for (Option option : options) {
            if (option.name().equals(name)) {
                return option;
            }
        }
        return null;
    }

    private UsageFault fault(String what) {
        return new UsageFault("putback " + command + ": " + what + "\nTry: putback " + command + " --help");
    }

    /**
     * The help of this command.
     *
     * @param more what else it says below the options, may be empty
     */
    public String help(String more) {
        StringBuilder text = new StringBuilder("Usage: putback ").append(command);
        for (String operand : operands) {
            text.append(' ').append(operand);
        }
        text.append(" [options]\n\n");
        Columns.paragraph(text, about);
        text.append('\n');
        int widest = HELP.spelling().length();
        for (Option option : options) {
            widest = Math.max(widest, option.spelling().length());
        }
        for (Option option : options) {
            line(text, option, widest);
        }
        line(text, HELP, widest);
        if (!more.isEmpty()) {
            text.append('\n');
            Columns.flowing(text, more.stripTrailing());
        }
        return text.toString();
    }

    private static void line(StringBuilder text, Option option, int widest) {
        Columns.row(text, option.spelling(), widest, option.about());
    }
}
