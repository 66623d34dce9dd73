package putback.store.sheets;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import putback.angles.bounce.Trace;
import putback.quantity.Shown;

/**
 * Reads a recorded bounce from CSV: time in seconds, then height or acceleration; a first row of names is passed over.
 * Columns part at commas, or at semicolons or tabs, with which the decimal comma may go. Nothing is thrown.
 */
public final class TraceReader {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,30}([.,]\\d{0,30})?|[.,]\\d{1,30})([eE][+-]?\\d{1,2})?");
    private static final double LARGEST = 1e12;

    /** Longer than any bounce; what comes after is not read. */
    private static final int MOST_ROWS = 500_000;

    private final String name;
    private final Faults faults = new Faults();
    private final List<Double> seconds = new ArrayList<>();
    private final List<Double> values = new ArrayList<>();
    private final List<Integer> lines = new ArrayList<>();

    private TraceReader(String name) {
        this.name = name;
    }

    public static TraceRead read(String file) {
        TraceReader reader = new TraceReader(file.isEmpty() ? "file" : file);
        String text = reader.text(file);
        return reader.answer(text == null ? null : reader.rows(text));
    }

    /** The most bytes that are read of a record. */
    public static int mostBytes() {
        return Form.TRACE.mostBytes();
    }

    /** The same for a record that was sent, under the name that messages give it. */
    public static TraceRead read(byte[] sent, String name) {
        TraceReader reader = new TraceReader(name);
        String text = SourceText.decoded(sent, name, Form.TRACE, reader.faults);
        Trace trace = text == null ? null : reader.rows(text);
        return reader.answer(trace);
    }

    private TraceRead answer(@Nullable Trace trace) {
        return trace == null || !faults.isEmpty() ? new TraceRead.Faulty(faults.sorted()) : new TraceRead.Sound(trace);
    }

    /** What is wrong with a trace as a whole, said at its beginning. */
    public static Fault fault(String file, String message) {
        return Fault.at(Place.startOf(file), message);
    }

    private @Nullable Trace rows(String text) {
        if (text.isBlank()) {
            faults.add(Place.startOf(name), "the file is empty; it needs rows of time in s and height or acceleration");
            return null;
        }
        char between = separator(text);
        Iterator<String> rows = text.lines().iterator();
        for (int line = 1; rows.hasNext() && !faults.isFull(); line++) {
            row(rows.next(), line, between);
            if (seconds.size() > MOST_ROWS) {
                faults.add(
                        new Place(name, line, 1),
                        "there are more than " + MOST_ROWS + " readings; cut the record to the bounce itself");
                return null;
            }
        }
        return faults.isEmpty() ? taken() : null;
    }

    private @Nullable String text(String file) {
        Place start = Place.startOf(name);
        try {
            if (!file.isEmpty()) {
                return SourceText.ofFile(Path.of(file), file, Form.TRACE, faults);
            }
            faults.add(start, "no file is named; give the path of a " + Form.TRACE.thing());
        } catch (InvalidPathException impossible) {
            faults.add(start, "no file can be called that; give the path of a " + Form.TRACE.thing());
        }
        return null;
    }

    private static char separator(String text) {
        return text.indexOf(';') >= 0 ? ';' : text.indexOf('\t') >= 0 ? '\t' : ',';
    }

    private void row(String row, int line, char between) {
        if (row.isBlank() || row.startsWith("#")) {
            return;
        }
        String[] cells = row.split(Pattern.quote(String.valueOf(between)), -1);
        boolean names = lines.isEmpty() && faults.isEmpty() && isName(cells[0]);
        if (names) {
            lines.add(0);
            return;
        }
        int columns = cells.length > 2 && cells[cells.length - 1].isBlank() ? cells.length - 1 : cells.length;
        if (columns != 2) {
            faults.add(
                    new Place(name, line, 1),
                    "this row has " + columns + (columns == 1 ? " column" : " columns")
                            + "; it needs two, time in s and height or acceleration");
            return;
        }
        Double time = number(cells[0], line, 1, "the time");
        Double value = number(cells[1], line, 2 + cells[0].length(), "the reading");
        if (time != null && value != null) {
            seconds.add(time);
            values.add(value);
            lines.add(line);
        }
    }

    /** A word that is not meant for a number. */
    private static boolean isName(String cell) {
        String plain = cell.strip();
        return !plain.isEmpty()
                && plain.chars().anyMatch(Character::isLetter)
                && !plain.equalsIgnoreCase("nan")
                && !NUMBER.matcher(plain).matches();
    }

    private @Nullable Double number(String cell, int line, int column, String what) {
        String plain = cell.strip();
        double value = NUMBER.matcher(plain).matches() ? Double.parseDouble(plain.replace(',', '.')) : Double.NaN;
        if (Math.abs(value) < LARGEST) {
            return value;
        }
        faults.add(
                new Place(name, line, column),
                what + " " + (plain.isEmpty() ? "is missing" : "\"" + Shown.text(plain) + "\" is not a number")
                        + "; write it like 0.25, or take the row out at an end of the record");
        return null;
    }

    private @Nullable Trace taken() {
        lines.remove(Integer.valueOf(0));
        Trace.Taken taken = Trace.of(array(seconds), array(values));
        if (taken instanceof Trace.Taken.Faulty faulty) {
            int line = lines.isEmpty() ? 1 : lines.get(faulty.row());
            faults.add(new Place(name, line, 1), faulty.because());
            return null;
        }
        return ((Trace.Taken.Sound) taken).trace();
    }

    private static double[] array(List<Double> list) {
        double[] array = new double[list.size()];
        for (int i = 0; i < array.length; i++) {
            array[i] = list.get(i);
        }
        return array;
    }
}
