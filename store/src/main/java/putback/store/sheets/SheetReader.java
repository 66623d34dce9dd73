package putback.store.sheets;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Shown;
import putback.sheet.Nearest;

/**
 * Reads a sheet, with all that it is built on, from a file or from the sheets that come with the program. Whatever the
 * file holds, the answer is a sheet or a list of faults with their places; nothing is thrown.
 */
public final class SheetReader {
    private SheetReader() {}

    /** Reads a file. Its bases are looked for in its folder, then among the stock sheets. */
    public static Read read(Path file) {
        return read(new Origin.OfFile(file), file.toString());
    }

    /** Reads a sheet that comes with the program. */
    public static Read stock(String id) {
        return Stock.has(id) ? read(new Origin.OfStock(id), id) : unknown(id, "");
    }

    /**
     * Reads a text, such as a car's own sheet. Its bases are looked for among the stock sheets.
     *
     * @param name what stands before line and column in a fault
     */
    public static Read text(String name, String text) {
        return text(name, text, KeptTexts.NONE);
    }

    /** The same with bases looked for among the stock sheets, then among those that a garage has kept. */
    public static Read text(String name, String text, KeptTexts kept) {
        return read(new Origin.OfText(name, text, kept), name);
    }

    /** Reads what a user named: a stock sheet where it is the plain id of one, else a file. */
    public static Read open(String fileOrStockId) {
        if (Stock.has(fileOrStockId)) {
            return stock(fileOrStockId);
        }
        Path file = path(fileOrStockId);
        return file != null && (Files.exists(file) || !Ids.isId(fileOrStockId))
                ? read(file)
                : unknown(fileOrStockId, ", and there is no such file");
    }

    /** Which sheets one that a user named is built on at the bottom; it alone where it is built on none. */
    public static List<String> roots(String fileOrStockId) {
        if (Stock.has(fileOrStockId)) {
            return Roots.of(new Origin.OfStock(fileOrStockId));
        }
        Path file = path(fileOrStockId);
        return file == null ? List.of() : Roots.of(new Origin.OfFile(file));
    }

    /** The same for a text, such as a car's own sheet. */
    public static List<String> roots(String name, String text, KeptTexts kept) {
        return Roots.of(new Origin.OfText(name, text, kept));
    }

    /** The ids of the sheets that come with the program, in the order in which they are best shown. */
    public static List<String> stockIds() {
        return Stock.ids();
    }

    private static @Nullable Path path(String text) {
        try {
            return text.isEmpty() ? null : Path.of(text);
        } catch (InvalidPathException impossible) {
            return null;
        }
    }

    private static Read unknown(String id, String also) {
        String near = Nearest.to(id, Stock.ids());
        return new Read.Faulty(List.of(Fault.at(
                Place.startOf(id.isEmpty() ? "sheet" : id),
                "no stock sheet is called \""
                        + Shown.text(id) + "\"" + also
                        + (near.isEmpty()
                                ? "; give the path of a sheet, or one of " + String.join(", ", Stock.ids())
                                : "; maybe " + near))));
    }

    private static Read read(Origin origin, String name) {
        Faults faults = new Faults();
        Bases.Loaded loaded = new Bases(faults).load(origin);
        return loaded == null ? new Read.Faulty(faults.sorted()) : new Building(loaded, name, faults).build();
    }
}
