package putback.app.text;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * What the text is shown on.
 *
 * @param width in columns
 * @param colour whether it knows colours and they are wanted
 * @param ascii whether it shows nothing but ASCII
 */
public record Screen(int width, boolean colour, boolean ascii) {
    /** For files and pipes. */
    public static final int DEFAULT_WIDTH = 80;

    private static final int NARROWEST = 40;
    private static final int WIDEST = 120;

    /** The screen that standard output goes to. */
    public static Screen here() {
        boolean terminal = isTerminal();
        Map<String, String> environment = System.getenv();
        return of(environment, terminal, terminal && !environment.containsKey("COLUMNS") ? askedWidth() : "");
    }

    /**
     * @param terminal whether it is a terminal at all: others get 80 columns without colour
     * @param size rows and columns as the terminal says them; may be empty
     */
    static Screen of(Map<String, String> environment, boolean terminal, String size) {
        String columns = environment.getOrDefault("COLUMNS", size.substring(size.indexOf(' ') + 1));
        String kind = environment.getOrDefault("TERM", "dumb");
        boolean colour = terminal
                && !kind.equals("dumb")
                && environment.getOrDefault("NO_COLOR", "").isEmpty();
        return new Screen(terminal ? width(columns) : DEFAULT_WIDTH, colour, isAscii(environment));
    }

    private static int width(String columns) {
        try {
            int said = Integer.parseInt(columns.strip());
            return said <= 0 ? DEFAULT_WIDTH : Math.max(NARROWEST, Math.min(WIDEST, said));
        } catch (NumberFormatException unknown) {
            return DEFAULT_WIDTH;
        }
    }

    /** The first of these that is set says it; where none is, UTF-8 is taken for granted. */
    private static boolean isAscii(Map<String, String> environment) {
        for (String name : new String[] {"LC_ALL", "LC_CTYPE", "LANG"}) {
            String locale = environment.getOrDefault(name, "").toLowerCase(Locale.ROOT);
            if (!locale.isEmpty()) {
                return !locale.contains("utf-8") && !locale.contains("utf8");
            }
        }
        return false;
    }

    /** Java's own answer is about input and output at once, so the system is asked: first where that costs nothing. */
    private static boolean isTerminal() {
        try {
            String output = Files.readSymbolicLink(Path.of("/proc/self/fd/1")).toString();
            return output.startsWith("/dev/pts/") || output.startsWith("/dev/tty") || output.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException notTold) {
            return asked();
        }
    }

    private static boolean asked() {
        try {
            ProcessBuilder test = new ProcessBuilder("test", "-t", "1").redirectOutput(ProcessBuilder.Redirect.INHERIT);
            return test.start().waitFor() == 0;
        } catch (IOException noSuchCommand) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static String askedWidth() {
        try {
            Process asking = new ProcessBuilder("stty", "size")
                    .redirectInput(new File("/dev/tty"))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return new String(asking.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).strip();
        } catch (IOException noAnswer) {
            return "";
        }
    }
}
