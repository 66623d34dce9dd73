package putback.store.sheets;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.price.Observed;
import putback.labour.seized.RustGrade;
import putback.quantity.Parsed;
import putback.quantity.Shown;
import putback.store.sheets.Node.Entries;

/**
 * Reads what a garage has seen, one JSON object a line: minutes of opening or closing a joint, how many fasteners were
 * seized, whether a resort worked. Whatever the file holds, the answer is what it says or a list of faults with their
 * places; nothing is thrown.
 */
public final class LearntReader {
    private final Faults faults = new Faults();
    private final List<Observed> seen = new ArrayList<>();

    private LearntReader() {}

    public static LearntRead read(String file) {
        LearntReader reader = new LearntReader();
        String text = reader.file(file);
        if (text != null) {
            reader.lines(file, text);
        }
        return reader.faults.isEmpty()
                ? new LearntRead.Sound(reader.seen)
                : new LearntRead.Faulty(reader.faults.sorted());
    }

    private @Nullable String file(String name) {
        Place start = Place.startOf(name.isEmpty() ? "file" : name);
        try {
            if (!name.isEmpty()) {
                return SourceText.ofFile(Path.of(name), name, Form.LEARNT, faults);
            }
            faults.add(start, "no file is named; give the path of a " + Form.LEARNT.thing());
        } catch (InvalidPathException impossible) {
            faults.add(start, "no file can be called that; give the path of a " + Form.LEARNT.thing());
        }
        return null;
    }

    private void lines(String name, String text) {
        int number = 0;
        for (String line : text.split("\n", -1)) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            Faults inLine = new Faults();
            String printable = SourceText.printable(line.strip(), name, Form.LEARNT, inLine);
            Entries entries = printable == null ? null : Composer.compose(name, printable, Form.LEARNT, inLine);
            if (entries != null) {
                observed(new JsonFields(entries, inLine));
            }
            faults.addShifted(inLine, number - 1);
        }
    }

    private void observed(JsonFields fields) {
        String joint = fields.text("joint");
        String resort = fields.text("resort");
        if ((joint == null) == (resort == null)) {
            fault(fields, "a line is of a joint or of a resort; give one of the two");
        } else if (resort != null) {
            tried(resort, fields);
        } else if (joint != null && fields.text("do") != null) {
            took(plain(joint), fields);
        } else if (joint != null) {
            rusted(plain(joint), fields);
        }
    }

    /** Both sides teach the same. */
    private static String plain(String joint) {
        return joint.startsWith("left.") || joint.startsWith("right.")
                ? joint.substring(joint.indexOf('.') + 1)
                : joint;
    }

    private void took(String joint, JsonFields fields) {
        String done = String.valueOf(fields.text("do"));
        double minutes = isTimed(fields) ? worked(fields) : 0;
        boolean known = done.equals("open") || done.equals("close");
        if (!known) {
            fault(fields, "do: \"" + Shown.text(done) + "\" is neither open nor close");
        } else if (!isTimed(fields)) {
            fault(fields, "the line has no minutes, which it needs");
        } else if (isTime(fields, minutes)) {
            seen.add(new Observed.Took(joint, done.equals("open"), minutes));
        }
    }

    private void rusted(String joint, JsonFields fields) {
        Integer of = whole(fields, "of");
        Integer seized = whole(fields, "seized");
        Integer grade = whole(fields, "rust");
        if (of == null || seized == null || grade == null) {
            fault(fields, "a line of a joint has do and minutes, or rust, of and seized in whole numbers");
        } else if (seized > of || of == 0) {
            fault(fields, seized + " of " + of + " seized cannot be; count 0 to all of them");
        } else if (RustGrade.of(grade) instanceof Parsed.Value<RustGrade> rust) {
            seen.add(new Observed.Rusted(joint, rust.value(), seized, of));
        } else {
            fault(fields, RustGrade.of(grade).refusal());
        }
    }

    private void tried(String resort, JsonFields fields) {
        String worked = fields.text("worked");
        boolean timed = isTimed(fields);
        double minutes = timed ? worked(fields) : 0;
        if (!"true".equals(worked) && !"false".equals(worked)) {
            fault(fields, "a line of a resort needs worked, true or false");
        } else if (!timed || isTime(fields, minutes)) {
            seen.add(new Observed.Tried(resort, "true".equals(worked), minutes));
        }
    }

    private static boolean isTimed(JsonFields fields) {
        return fields.entries().get("minutes") != null;
    }

    /** Minutes without what interrupted them; no number, with the fault told, where one of them is none. */
    private static double worked(JsonFields fields) {
        Double minutes = fields.number("minutes");
        boolean interrupted = fields.entries().get("interruptedMinutes") != null;
        Double interruptions = interrupted ? fields.number("interruptedMinutes") : Double.valueOf(0);
        return minutes == null || interruptions == null ? Double.NaN : minutes - interruptions;
    }

    private boolean isTime(JsonFields fields, double minutes) {
        if (minutes > 0 || Double.isNaN(minutes)) {
            return minutes > 0;
        }
        fault(fields, "without its interruptions nothing is left of the minutes; they have to be more than 0");
        return false;
    }

    private static @Nullable Integer whole(JsonFields fields, String key) {
        Double number = fields.number(key);
        return number == null || number != Math.rint(number) ? null : number.intValue();
    }

    private static void fault(JsonFields fields, String message) {
        fields.faults().add(fields.place(), message);
    }
}
