package putback.app.cli;

import java.io.PrintStream;

/**
 * Where a command writes.
 *
 * @param out what was asked for
 * @param err what is wrong
 */
public record Terminal(PrintStream out, PrintStream err) {}
