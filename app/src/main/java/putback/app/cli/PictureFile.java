package putback.app.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Writes a picture to a file, but never over what it was read from. */
final class PictureFile {
    private PictureFile() {}

    /** A picture and figures for other programs are two questions. */
    static void alone(String command, Arguments arguments) throws UsageFault {
        if (arguments.has("--svg") && arguments.has("--json")) {
            throw Renewing.fault(command, "--json and --svg do not go together; give one of them");
        }
    }

    /** Returns one of {@link Exit}. */
    static int write(String name, String from, String svg, Terminal terminal) {
        if (name.isEmpty() || name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json")) {
            terminal.say("putback: --svg FILE: give the picture a name of its own, such as wheels.svg");
            return Exit.BAD_INPUT;
        }
        try {
            Path to = Path.of(name);
            if (Files.exists(to) && Files.isSameFile(to, Path.of(from))) {
                terminal.say("putback: " + name + " is what is read and would be lost; give --svg another name");
                return Exit.BAD_INPUT;
            }
            Files.write(to, svg.getBytes(StandardCharsets.UTF_8));
            return Exit.DONE;
        } catch (IOException | InvalidPathException fault) {
            terminal.say("putback: cannot write " + name + ": " + FileFault.said(fault));
            return Exit.FAILED;
        }
    }
}
