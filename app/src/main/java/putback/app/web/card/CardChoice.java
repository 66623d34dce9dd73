package putback.app.web.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.app.web.planning.SheetView;
import putback.store.books.Books;
import putback.store.books.CarSheet;
import putback.store.books.CarSheets;
import putback.store.overlay.Overlay;
import putback.store.sheets.Read;

/**
 * What has to be chosen before there is a card: the nearest sheet, then what is renewed.
 *
 * @param bases none where the car is built on one already
 * @param sheet what may be renewed; null as long as no sheet is chosen
 * @param chosen bases that the form hands on
 */
public record CardChoice(
        String car,
        String carId,
        List<Nearest> bases,
        @Nullable SheetView sheet,
        List<String> chosen,
        int seen,
        Question question,
        List<CarSheet> history) {
    static CardChoice of(CardFile file, Shelf shelf, Books books) {
        Overlay own = file.overlay();
        SheetView sheet = null;
        if (own != null && shelf.text(file.question().sheet(), own.write()) instanceof Read.Sheet read) {
            sheet = SheetView.of(file.question(), read.assembly());
        }
        return new CardChoice(
                file.car().called(),
                file.car().id(),
                own == null ? Nearest.all(books, shelf) : List.of(),
                sheet,
                own == null || file.seen() > 0 ? List.of() : own.bases(),
                file.seen(),
                file.question(),
                new CarSheets(books).history(file.car().id()));
    }
}
