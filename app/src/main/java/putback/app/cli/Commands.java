package putback.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** All commands. Only the one that is called is loaded: each start pays for every class it touches. */
public final class Commands {
    /** In the order of the help. */
    private static final List<String> NAMES = List.of(
            "plan",
            "alongside",
            "price",
            "learnt",
            "papers",
            "check",
            "tighten",
            "setting",
            "toolbox",
            "resorts",
            "owing",
            "bush",
            "bounce",
            "kinematics",
            "angles",
            "proof",
            "demo",
            "serve",
            "person",
            "backup",
            "restore",
            "verify");

    private Commands() {}

    private static @Nullable Command named(String name) {
        return switch (name) {
            case "plan" -> new PlanCommand();
            case "alongside" -> new AlongsideCommand();
            case "price" -> new PriceCommand();
            case "learnt" -> new LearntCommand();
            case "papers" -> new PapersCommand();
            case "check" -> new CheckCommand();
            case "tighten" -> new TightenCommand();
            case "setting" -> new SettingCommand();
            case "toolbox" -> new ToolboxCommand();
            case "resorts" -> new ResortsCommand();
            case "owing" -> new OwingCommand();
            case "bush" -> new BushCommand();
            case "bounce" -> new BounceCommand();
            case "kinematics" -> new KinematicsCommand();
            case "angles" -> new AnglesCommand();
            case "proof" -> new ProofCommand();
            case "demo" -> new DemoCommand();
            case "serve" -> new ServeCommand();
            case "person" -> new PersonCommand(System.in);
            case "backup" -> new BackupCommand();
            case "restore" -> new RestoreCommand();
            case "verify" -> new VerifyCommand();
            default -> null;
        };
    }

    /**
     * Runs the command that the words name.
     *
     * @return one of {@link Exit}
     */
    public static int run(List<String> words, Terminal terminal) {
        String name = words.isEmpty() ? "--help" : words.get(0);
        switch (name) {
            case "help" -> {
                if (words.size() > 1 && !words.get(1).startsWith("-")) {
                    return run(words.get(1), List.of("--help"), terminal);
                }
                terminal.out().print(help());
                return Exit.DONE;
            }
            case "--help", "-h" -> {
                terminal.out().print(help());
                return Exit.DONE;
            }
            case "--version" -> {
                terminal.out().println("putback " + version());
                return Exit.DONE;
            }
            default -> {
                return run(name, words.subList(1, words.size()), terminal);
            }
        }
    }

    private static int run(String name, List<String> words, Terminal terminal) {
        Command command = named(name);
        if (command == null) {
            String nearest = Spelling.nearest(name, NAMES);
            terminal.say("putback: there is no command \"" + name + "\"" + (nearest == null ? "" : ". Maybe " + nearest)
                    + "\nTry: putback --help");
            return Exit.BAD_INPUT;
        }
        try {
            Usage usage = command.usage();
            Arguments arguments = usage.read(words);
            if (arguments.wantsHelp()) {
                terminal.out().print(usage.help(command.more()));
                return Exit.DONE;
            }
            return command.run(arguments, terminal);
        } catch (UsageFault fault) {
            terminal.say(fault.said());
            return Exit.BAD_INPUT;
        }
    }

    private static String help() {
        StringBuilder text = new StringBuilder("Usage: putback COMMAND ...\n\n");
        int widest = 0;
        for (String name : NAMES) {
            widest = Math.max(widest, name.length());
        }
        for (String name : NAMES) {
            Command command = named(name);
            if (command != null) {
                Columns.row(text, name, widest, command.usage().about());
            }
        }
        if (!NAMES.isEmpty()) {
            text.append('\n');
        }
        return text.append(
                        "putback COMMAND --help or putback help COMMAND explains each; putback --version\nsays which this is.\n")
                .toString();
    }

    private static String version() {
        try (InputStream stream = Commands.class.getResourceAsStream("/putback/app/version")) {
            return stream == null ? "unknown" : new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            return "unknown";
        }
    }
}
