package putback.app.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.store.sheets.Fault;

/**
 * Prints the faults of files that have a row a line, such as a trace or a ledger: all of them, as of any file. But where
 * about every row is faulty it is the wrong file, and ten lines say as much as a thousand.
 */
final class FaultLines {
    private static final int ENOUGH = 10;
    private static final int FULL = 1000;

    private FaultLines() {}

    /**
     * @param kind what the file should be, such as {@code a bounce trace}
     */
    static void say(List<Fault> faults, String kind, Terminal terminal) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        faults.forEach(fault -> counts.merge(fault.file(), 1, Integer::sum));
        Map<String, Integer> said = new LinkedHashMap<>();
        for (Fault fault : faults) {
            int all = counts.getOrDefault(fault.file(), 0);
            int before = said.merge(fault.file(), 1, Integer::sum) - 1;
            if (before < ENOUGH || !isWrongFile(fault.file(), all)) {
                terminal.say(fault.toString());
            } else if (before == ENOUGH) {
                terminal.say("putback: " + fault.file() + ": and " + (all - ENOUGH)
                        + " more faults, in about every line. Maybe it is another file: " + kind + " is wanted here");
            }
        }
    }

    private static boolean isWrongFile(String file, int faults) {
        return faults > ENOUGH && (faults >= FULL || 2 * faults >= lines(file, 2 * faults + 1));
    }

    /** How many lines the file has, or as many as are asked about. */
    private static int lines(String file, int most) {
        try (BufferedReader reader = Files.newBufferedReader(Path.of(file), StandardCharsets.ISO_8859_1)) {
            int lines = 0;
            while (lines < most && reader.readLine() != null) {
                lines++;
            }
            return lines;
        } catch (IOException | InvalidPathException gone) {
            return most;
        }
    }
}
