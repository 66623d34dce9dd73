package putback.store.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import putback.labour.price.EstimateEntry;
import putback.labour.price.Overrun;
import putback.labour.price.PlaceProfile;
import putback.store.sheets.Node.Entries;

/**
 * Reads what a place asks of an estimate, from those that come with the program or from a garage's own file. Whatever the
 * file holds, the answer is a profile or a list of faults with their places; nothing is thrown.
 */
public final class PlaceReader {
    private static final String FOLDER = "putback/places/";
    private static final BigDecimal MOST_PERCENT = BigDecimal.valueOf(100);
    private static final Map<String, Boolean> WHICH = new TreeMap<>(Map.of("less", true, "more", false));
    private static final Map<String, EstimateEntry> ENTRIES = entries();

    private final Faults faults = new Faults();

    private PlaceReader() {}

    private static Map<String, EstimateEntry> entries() {
        Map<String, EstimateEntry> entries = new LinkedHashMap<>();
        for (EstimateEntry one : EstimateEntry.values()) {
            entries.put(one.word(), one);
        }
        return entries;
    }

    /** The places that come with the program. */
    public static List<String> ids() {
        List<String> ids = new ArrayList<>();
        for (String line : resource("places.txt").split("\n", -1)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                ids.add(line.strip());
            }
        }
        return ids;
    }

    /**
     * @param idOrFile a place that comes with the program, {@code not-set}, or the path of a file
     */
    public static PlaceRead open(String idOrFile) {
        if (idOrFile.equals(PlaceProfile.NOT_SET.id())) {
            return new PlaceRead.Sound(PlaceProfile.NOT_SET);
        }
        PlaceReader reader = new PlaceReader();
        return ids().contains(idOrFile)
                ? reader.answer(resource(idOrFile + ".yaml"), idOrFile)
                : reader.answer(reader.file(idOrFile), idOrFile);
    }

    private static String resource(String name) {
        try (InputStream stream = PlaceReader.class.getResourceAsStream("/" + FOLDER + name)) {
            if (stream == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new IllegalStateException(name + " in the program cannot be read", broken);
        }
    }

    private @Nullable String file(String name) {
        Place start = Place.startOf(name.isEmpty() ? "file" : name);
        String known = "; the places that come with the program are " + String.join(", ", ids());
        try {
            if (!name.isEmpty()) {
                return SourceText.ofFile(Path.of(name), name, Form.PLACE, faults);
            }
            faults.add(start, "no place is named" + known);
        } catch (InvalidPathException impossible) {
            faults.add(start, "no file can be called that" + known);
        }
        return null;
    }

    private PlaceRead answer(@Nullable String text, String name) {
        String printable = text == null ? null : SourceText.printable(text, name, Form.PLACE, faults);
        Entries top = printable == null ? null : Composer.compose(name, printable, Form.PLACE, faults);
        PlaceProfile profile = top == null ? null : profile(top);
        return profile == null || !faults.isEmpty()
                ? new PlaceRead.Faulty(faults.sorted())
                : new PlaceRead.Sound(profile);
    }

    private PlaceProfile profile(Entries top) {
        Fields file = Fields.of(top, top.place(), "the place", Keys.PLACE, faults);
        file.require("place", "name", "source");
        String id = file.text("place", "place");
        if (file.has("place") && !Ids.isId(id)) {
            file.fault("place", "an id has lower case letters, digits and hyphens, such as our-town");
        }
        return new PlaceProfile(
                id,
                file.text("name", id),
                file.text("currency", ""),
                file.text("before", ""),
                file.has("written-consent") ? file.flag("written-consent") : null,
                ResortsReader.words(file, "carries", ENTRIES),
                overrun(file),
                file.text("beyond", ""),
                file.text("old-parts", ""),
                file.text("warranty", ""),
                file.text("source", ""));
    }

    private static Overrun overrun(Fields file) {
        Fields over = file.map("over", Keys.OVERRUN);
        if (over == null) {
            return Overrun.UNKNOWN;
        }
        if (over.has("amount") && over.has("percent") && !over.has("which")) {
            file.fault("over", "amount and percent do not say which of the two counts; add which: less or which: more");
        }
        return new Overrun(
                over.amounts().price("amount"),
                over.amounts().number("percent", BigDecimal.ZERO, MOST_PERCENT),
                over.word("which", WHICH, false),
                over.amounts().price("most"));
    }
}
