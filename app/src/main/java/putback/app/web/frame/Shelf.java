package putback.app.web.frame;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.learning.Learning;
import putback.app.learning.Sheets;
import putback.labour.price.OwnFigures;
import putback.store.books.Books;
import putback.store.books.CarSheet;
import putback.store.books.CarSheets;
import putback.store.books.KeptSheets;
import putback.store.books.Settings;
import putback.store.sheets.KeptTexts;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/**
 * Where a page finds the sheet that an address names, among the stock sheets, those kept, or a car's own; and what the
 * garage has seen on cars like it.
 */
public final class Shelf implements Sheets {
    /** Before the id of a car whose own sheet is meant. */
    public static final String OF_CAR = "car-";

    /** The setting that marks the books of an invented garage. */
    public static final String INVENTED = "invented";

    private static final String DEMO = "demo-";

    private final @Nullable Books books;
    private final @Nullable Learning learning;

    public Shelf(Garage garage) {
        this(garage.books());
    }

    /** Of books that no page shows. */
    public Shelf(@Nullable Books books) {
        this.books = books;
        learning = books == null ? null : new Learning(books, this);
    }

    /** What the garage has seen on cars of the family of a sheet; nothing where no books are kept. */
    public OwnFigures seen(String name) {
        return learning == null ? OwnFigures.NONE : learning.seen(name);
    }

    /** Has the garage learn from a job about which something has changed. */
    public void learn(String job) {
        if (learning != null) {
            learning.learn(job);
        }
    }

    /** The stock sheets that are offered: in a real garage's books none of the demonstration's invented cars is among them. */
    public List<String> stock() {
        Books kept = books;
        if (kept == null || "yes".equals(new Settings(kept).all().get(INVENTED))) {
            return SheetReader.stockIds();
        }
        List<String> ids = new ArrayList<>();
        for (String id : SheetReader.stockIds()) {
            if (!id.startsWith(DEMO)) {
                ids.add(id);
            }
        }
        return ids;
    }

    /** Null when no sheet is called so. */
    @Override
    public @Nullable Read read(String name) {
        if (SheetReader.stockIds().contains(name)) {
            return SheetReader.stock(name);
        }
        String text = kept(name);
        return text == null ? null : text(name, text);
    }

    private @Nullable String kept(String name) {
        Books kept = books;
        if (kept == null) {
            return null;
        }
        return name.startsWith(OF_CAR)
                ? new CarSheets(kept)
                        .current(name.substring(OF_CAR.length()))
                        .map(CarSheet::text)
                        .orElse(null)
                : new KeptSheets(kept).text(name);
    }

    @Override
    public List<String> roots(String name) {
        if (SheetReader.stockIds().contains(name)) {
            return SheetReader.roots(name);
        }
        String text = kept(name);
        return text == null ? List.of() : SheetReader.roots(name, text, kept());
    }

    @Override
    public String ofCar(String car) {
        return OF_CAR + car;
    }

    /** A text whose bases may be stock sheets and those that the garage has kept. */
    public Read text(String name, String text) {
        return SheetReader.text(name, text, kept());
    }

    /** Where bases are looked for that are no stock sheets. */
    public KeptTexts kept() {
        return books == null ? KeptTexts.NONE : new KeptSheets(books);
    }
}
