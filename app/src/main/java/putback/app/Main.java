package putback.app;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import putback.app.cli.Commands;
import putback.app.cli.Exit;
import putback.app.cli.Terminal;

/** Where the program starts. */
public final class Main {

    private Main() {}

    /** Runs the command named by the arguments and ends with its exit code. */
    public static void main(String[] words) {
        Written written = new Written(new FileOutputStream(FileDescriptor.out));
        PrintStream out = stream(written);
        PrintStream err = stream(new FileOutputStream(FileDescriptor.err));
        int exit = run(List.of(words), new Terminal(out, err));
        if (out.checkError() && !written.hungUp()) {
            err.println("putback: what was printed could not be written: " + written.why() + ".");
            exit = Exit.FAILED;
        }
        err.flush();
        if (exit != Exit.DONE) {
            System.exit(exit);
        }
    }

    /** Nobody at a car can do anything with a stack trace; PUTBACK_TRACE=1 is for whoever mends this. */
    @SuppressWarnings("CatchAndPrintStackTrace")
    private static int run(List<String> words, Terminal terminal) {
        try {
            return Commands.run(words, terminal);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            terminal.say("putback: a fault in the program itself (" + fault
                    + "). Maybe report it, with the file it was given.");
            if (System.getenv("PUTBACK_TRACE") != null) {
                fault.printStackTrace(terminal.err());
            }
            return Exit.FAILED;
        }
    }

    /** Text goes out as UTF-8 whatever the locale says. */
    private static PrintStream stream(OutputStream to) {
        return new PrintStream(new BufferedOutputStream(to, 8192), false, StandardCharsets.UTF_8);
    }
}
