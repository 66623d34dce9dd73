package putback.app.web.frame;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.store.books.Books;
import putback.store.books.CarSheet;
import putback.store.books.CarSheets;
import putback.store.books.KeptSheets;
import putback.store.books.Settings;
import putback.store.sheets.KeptTexts;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** Where a page finds the sheet that an address names: among the stock sheets, those kept, or a car's own. */
public final class Shelf {
    /** Before the id of a car whose own sheet is meant. */
    public static final String OF_CAR = "car-";

    /** The setting that marks the books of an invented garage. */
    public static final String INVENTED = "invented";

    private static final String DEMO = "demo-";

    private final @Nullable Books books;

    public Shelf(Garage garage) {
        books = garage.books();
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
    @Nullable
    public Read read(String name) {
        Books kept = books;
        if (SheetReader.stockIds().contains(name)) {
            return SheetReader.stock(name);
        }
        if (kept == null) {
            return null;
        }
        String text = name.startsWith(OF_CAR)
                ? new CarSheets(kept)
                        .current(name.substring(OF_CAR.length()))
                        .map(CarSheet::text)
                        .orElse(null)
                : new KeptSheets(kept).text(name);
        return text == null ? null : text(name, text);
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
