package putback.app.web;

import org.jspecify.annotations.Nullable;
import putback.store.books.Books;
import putback.store.books.CarSheets;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** Where a page finds the sheet that an address names: among the stock sheets, or a car's own. */
final class Shelf {
    /** Before the id of a car whose own sheet is meant. */
    static final String OF_CAR = "car-";

    private final @Nullable Books books;

    Shelf(Garage garage) {
        books = garage.books();
    }

    /** Null when no sheet is called so. */
    @Nullable
    Read read(String name) {
        Books kept = books;
        if (kept != null && name.startsWith(OF_CAR)) {
            return new CarSheets(kept)
                    .current(name.substring(OF_CAR.length()))
                    .map(sheet -> SheetReader.text(name, sheet.text()))
                    .orElse(null);
        }
        return SheetReader.stockIds().contains(name) ? SheetReader.stock(name) : null;
    }
}
