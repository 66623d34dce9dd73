package putback.app.web.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.app.web.frame.Shelf;
import putback.app.web.planning.SheetView;
import putback.store.books.Books;
import putback.store.books.KeptSheet;
import putback.store.books.KeptSheets;
import putback.store.overlay.Overlay;
import putback.store.sheets.Piece;
import putback.store.sheets.Question;
import putback.store.sheets.QuestionReader;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/**
 * A sheet, or several that are one car together, from which a new car may differ.
 *
 * @param bases their ids
 * @param kept whether it is the garage's own
 * @param questions about how a car differs
 * @param sheet what may be renewed on it
 */
public record Nearest(List<String> bases, String title, boolean kept, List<Question> questions, SheetView sheet) {
    public Nearest {
        bases = List.copyOf(bases);
        questions = List.copyOf(questions);
    }

    /** The stock sheets, those of them that go together, and those that the garage has kept. */
    static List<Nearest> all(Books books, Shelf shelf) {
        List<Nearest> all = new ArrayList<>();
        for (String id : shelf.stock()) {
            add(all, List.of(id), "", false, shelf);
        }
        for (String id : shelf.stock()) {
            for (String below : QuestionReader.stock(id).seams().keySet()) {
                add(all, List.of(below, id), "", false, shelf);
            }
        }
        for (KeptSheet sheet : new KeptSheets(books).all()) {
            add(all, List.of(sheet.id()), sheet.title(), true, shelf);
        }
        return all;
    }

    private static void add(List<Nearest> all, List<String> bases, String title, boolean kept, Shelf shelf) {
        if (shelf.text("nearest", joined("nearest", title, bases).write()) instanceof Read.Sheet read) {
            SheetView view =
                    SheetView.of(putback.app.web.frame.Question.of("nearest", List.of(), "both"), read.assembly());
            all.add(new Nearest(bases, title.isEmpty() ? title(bases) : title, kept, questions(bases), view));
        }
    }

    private static String title(List<String> bases) {
        List<String> titles = new ArrayList<>();
        for (String base : bases) {
            if (SheetReader.stock(base) instanceof Read.Sheet sheet) {
                titles.add(sheet.assembly().sheet().title());
            }
        }
        return String.join("; with it: ", titles);
    }

    /** A car on these sheets, with what has to be said where one lies over another. */
    static Overlay joined(String sheet, String title, List<String> bases) {
        Overlay overlay = Overlay.on(sheet, title.isEmpty() ? sheet : title, bases);
        for (String over : bases) {
            Map<String, Piece.Entries> seams = QuestionReader.stock(over).seams();
            for (String below : bases) {
                Piece.Entries seam = seams.get(below);
                overlay = seam == null ? overlay : overlay.laid(seam);
            }
        }
        return overlay;
    }

    /** What two sheets ask alike is asked once. */
    private static List<Question> questions(List<String> bases) {
        Map<String, Question> questions = new LinkedHashMap<>();
        for (String base : bases) {
            for (Question question : QuestionReader.stock(base).questions()) {
                questions.putIfAbsent(question.id(), question);
            }
        }
        return List.copyOf(questions.values());
    }

    /** By which a form names it. */
    public String name() {
        return String.join("+", bases);
    }
}
