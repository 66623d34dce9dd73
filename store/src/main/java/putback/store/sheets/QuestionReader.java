package putback.store.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;

/** Reads what is asked about a car that is near a stock sheet, and what each answer says of it. */
public final class QuestionReader {
    private static final String FOLDER = "/putback/questions/";
    private static final Set<String> TOP = ordered("questions", "over");
    private static final Set<String> QUESTION = ordered("ask", "options");
    private static final Set<String> OPTION = ordered("label", "picture", "says");
    private static final Set<String> SAYS = ordered("parts", "joints", "units", "follow-ups");
    private static final int LEAST_OPTIONS = 2;
    private static final int MOST_OPTIONS = 3;

    private final Faults faults = new Faults();

    private QuestionReader() {}

    /** Those that come with the program for a stock sheet; none where there are none. */
    public static QuestionsRead.Sound stock(String sheet) {
        String name = sheet + ".yaml";
        try (InputStream stream = Stock.has(sheet) ? QuestionReader.class.getResourceAsStream(FOLDER + name) : null) {
            if (stream == null) {
                return new QuestionsRead.Sound(List.of(), Map.of());
            }
            QuestionsRead read = text(name, new String(stream.readAllBytes(), StandardCharsets.UTF_8));
            if (read instanceof QuestionsRead.Sound sound) {
                return sound;
            }
            throw new IllegalStateException("the questions in the program are wrong: " + read);
        } catch (IOException broken) {
            throw new IllegalStateException(name + " in the program cannot be read", broken);
        }
    }

    /**
     * Reads a text.
     *
     * @param name what stands before line and column in a fault
     */
    public static QuestionsRead text(String name, String text) {
        return new QuestionReader().read(name, text);
    }

    private QuestionsRead read(String name, String text) {
        String printable = SourceText.printable(text, name, Form.QUESTIONS, faults);
        Entries top = printable == null ? null : Composer.compose(name, printable, Form.QUESTIONS, faults);
        if (top == null) {
            return new QuestionsRead.Faulty(faults.sorted());
        }
        Fields file = Fields.of(top, top.place(), "the questions", TOP, faults);
        file.require("questions");
        List<Question> questions = new ArrayList<>();
        for (Entry entry : entries(file, "questions")) {
            questions.add(question(entry));
        }
        Map<String, Piece.Entries> seams = new LinkedHashMap<>();
        for (Entry entry : entries(file, "over")) {
            seams.put(
                    entry.key().text(),
                    says(
                            entry.value(),
                            entry.key().place(),
                            "over " + entry.key().text()));
        }
        return faults.isEmpty() ? new QuestionsRead.Sound(questions, seams) : new QuestionsRead.Faulty(faults.sorted());
    }

    private Question question(Entry entry) {
        String id = id(entry);
        Fields fields = fields(entry, "question " + id, QUESTION);
        fields.require("ask", "options");
        List<Option> options = new ArrayList<>();
        for (Entry option : entries(fields, "options")) {
            options.add(option(option));
        }
        if (fields.has("options") && (options.size() < LEAST_OPTIONS || options.size() > MOST_OPTIONS)) {
            fields.fault("options", "there are " + options.size() + "; give two or three");
        }
        if (!options.isEmpty() && !options.get(0).says().byKey().isEmpty()) {
            fields.fault("options", "the first is what the stock sheet describes, and says nothing; leave says out");
        }
        return new Question(id, fields.text("ask", id), options);
    }

    private Option option(Entry entry) {
        String id = id(entry);
        Fields fields = fields(entry, "option " + id, OPTION);
        fields.require("label", "picture");
        Node says = fields.node("says");
        return new Option(
                id,
                fields.text("label", id),
                fields.text("picture", ""),
                says == null ? Piece.Entries.NONE : says(says, fields.at("says"), "option " + id));
    }

    /** A fragment of a sheet; whether a car can be so is for {@link SheetReader} to say. */
    private Piece.Entries says(Node node, Place at, String what) {
        if (!(node instanceof Entries entries)) {
            faults.add(at, what + ": this is " + node.phrase() + "; write a map with parts or joints");
            return Piece.Entries.NONE;
        }
        Fields says = Fields.of(entries, at, "what " + what + " says", SAYS, faults);
        for (String section : SAYS) {
            for (Entry entry : entries(says, section)) {
                if (!Ids.isId(Ids.plain(entry.key().text()))) {
                    faults.add(
                            entry.key().place(),
                            SectionReader.wrongId(entry.key().text()));
                }
                keys(section, entry);
            }
        }
        return Piece.of(entries);
    }

    private void keys(String section, Entry entry) {
        if (entry.value() instanceof Entries values) {
            Set<String> known = new LinkedHashSet<>(KeyOrder.ofEntry(section));
            Fields.of(values, entry.key().place(), entry.key().text(), known, faults);
        } else if (!Node.isNothing(entry.value())) {
            faults.add(
                    entry.place(), entry.key().text() + " is " + entry.value().phrase() + "; write a map, or null");
        }
    }

    private String id(Entry entry) {
        String id = entry.key().text();
        if (!Ids.isId(id)) {
            faults.add(entry.key().place(), SectionReader.wrongId(id));
        }
        return id;
    }

    private Fields fields(Entry entry, String what, Set<String> keys) {
        if (entry.value() instanceof Entries values) {
            return Fields.of(values, entry.key().place(), what, keys, faults);
        }
        faults.add(
                entry.place(),
                what + " is " + entry.value().phrase() + "; write a map with " + String.join(", ", keys));
        return Fields.of(Entries.none(entry.place()), entry.place(), what, keys, new Faults());
    }

    private List<Entry> entries(Fields fields, String key) {
        Node node = fields.node(key);
        if (node instanceof Entries entries) {
            return List.copyOf(entries.byKey().values());
        }
        if (node != null) {
            fields.fault(key, "this is " + node.phrase() + "; write a map of ids");
        }
        return List.of();
    }

    private static Set<String> ordered(String... keys) {
        return new LinkedHashSet<>(List.of(keys));
    }
}
