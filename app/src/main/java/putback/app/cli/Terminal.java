package putback.app.cli;

import java.io.PrintStream;
import putback.quantity.Shown;

/**
 * Where a command writes.
 *
 * @param out what was asked for
 * @param err what is wrong
 */
public record Terminal(PrintStream out, PrintStream err) {
    /** Says what is wrong. Words that came from outside may be in it: nothing in it steers the terminal. */
    public void say(String message) {
        err.println(Shown.lines(message));
    }
}
