package putback.store.sheets;

import java.math.BigDecimal;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.labour.seized.Nearby;
import putback.labour.seized.Refusal;
import putback.labour.seized.Seized;
import putback.quantity.Shown;
import putback.sheet.Nearest;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;
import putback.store.sheets.Node.Text;

/**
 * Reads what could be tried on one fastener that will not move. Whatever the file holds, the answer is a question to be
 * answered or a list of faults with their places; nothing is thrown.
 */
public final class ResortsReader {
    private final Faults faults = new Faults();

    private ResortsReader() {}

    public static ResortsRead read(String file) {
        ResortsReader reader = new ResortsReader();
        Seized seized = reader.seized(file);
        return seized == null || !reader.faults.isEmpty()
                ? new ResortsRead.Faulty(reader.faults.sorted())
                : new ResortsRead.Sound(seized);
    }

    private @Nullable Seized seized(String name) {
        Entries top = compose(name);
        if (top == null) {
            return null;
        }
        Fields file = Fields.of(top, top.place(), "the file", Keys.RESORTS_FILE, faults);
        file.require("rate", "resorts");
        BigDecimal rate = file.amounts().price("rate");
        if (rate != null && rate.signum() == 0) {
            file.fault("rate", "an hour has to cost more than 0; write it like 60.00");
        }
        Refusal refusal = file.word("refuses", SeizedWords.REFUSALS, Refusal.STUCK);
        List<Nearby> nearby = words(file, "near", SeizedWords.NEARBY);
        AttemptReader attempts = new AttemptReader(file, faults);
        return new Seized(
                rate == null ? BigDecimal.ZERO : rate,
                attempts.attempts(),
                file.has("refuses") ? refusal : null,
                nearby);
    }

    private @Nullable Entries compose(String name) {
        Place start = Place.startOf(name.isEmpty() ? "file" : name);
        try {
            String text = name.isEmpty() ? null : SourceText.ofFile(Path.of(name), name, Form.RESORTS, faults);
            String printable = text == null ? null : SourceText.printable(text, name, Form.RESORTS, faults);
            if (name.isEmpty()) {
                faults.add(start, "no file is named; give the path of a " + Form.RESORTS.thing());
            }
            return printable == null ? null : Composer.compose(name, printable, Form.RESORTS, faults);
        } catch (InvalidPathException impossible) {
            faults.add(start, "no file can be called that; give the path of a " + Form.RESORTS.thing());
            return null;
        }
    }

    /** The words of a list, each once; what is not one is told. */
    static <E> List<E> words(Fields fields, String key, Map<String, E> known) {
        Set<E> meant = new LinkedHashSet<>();
        for (Node item : fields.lists().items(key)) {
            Text text = fields.lists().asText(item, key);
            E meaning = text == null ? null : known.get(text.text());
            if (meaning != null) {
                meant.add(meaning);
            } else if (text != null) {
                String near = Nearest.to(text.text(), known.keySet());
                fields.fault(
                        text.place(),
                        key,
                        "\"" + Shown.text(text.text()) + "\" is not known here; write "
                                + (near.isEmpty() ? "one of: " + String.join(", ", known.keySet()) : near));
            }
        }
        return new ArrayList<>(meant);
    }

    /** The entries of a map of ids; empty, with the fault told, when it is none. */
    static List<Entry> section(Fields fields, String key, Faults faults) {
        Node node = fields.node(key);
        if (!(node instanceof Entries section)) {
            if (node != null) {
                fields.fault(key, "this is " + node.phrase() + "; write a map of ids");
            }
            return List.of();
        }
        if (section.byKey().isEmpty()) {
            fields.fault(key, "there is no resort in it; name at least one, such as cut: {minutes: 15, chance: 1}");
        }
        for (Entry entry : section.byKey().values()) {
            if (!Ids.isId(entry.key().text())) {
                faults.add(
                        entry.key().place(), SectionReader.wrongId(entry.key().text()));
            }
        }
        return List.copyOf(section.byKey().values());
    }
}
