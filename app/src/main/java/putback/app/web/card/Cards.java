package putback.app.web.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.papers.CarLine;
import putback.app.papers.CustomerLine;
import putback.app.papers.JobHead;
import putback.app.text.Headline;
import putback.app.web.frame.Shelf;
import putback.app.web.job.PaperPages;
import putback.app.web.planning.SheetView;
import putback.plan.Plan;
import putback.sheet.Assembly;
import putback.sheet.JointKind;
import putback.sheet.Part;
import putback.store.books.Books;
import putback.store.books.CarSheet;
import putback.store.books.CarSheets;
import putback.store.books.KeptSheets;
import putback.store.books.Settings;
import putback.store.overlay.Overlay;
import putback.store.sheets.Read;

/** Makes cards of cars' own sheets. */
record Cards(Books books, Shelf shelf) {
    /**
     * What is on a card that is not kept.
     *
     * @param values by name of field
     * @param faults by name of field; under an empty name those that belong to none, one a line
     * @param said what has to be read first
     */
    record Typed(Map<String, String> values, Map<String, String> faults, String said) {
        static final Typed NOTHING = new Typed(Map.of(), Map.of(), "");
    }

    CardWords words() {
        String unit = PaperPages.text(new Settings(books).all(), "torque");
        return new CardWords(unit.isEmpty() ? "N·m" : unit);
    }

    /** The sheet by its number; null where there is none. */
    @Nullable
    Overlay seen(CardFile file, int number) {
        if (number == file.seen() || number == 0) {
            return file.overlay();
        }
        for (CarSheet sheet : new CarSheets(books).history(file.car().id())) {
            if (sheet.number() == number) {
                return CardFile.overlay(sheet);
            }
        }
        return null;
    }

    /** Who kept the sheet that holds. */
    String lastWord(CardFile file) {
        return new CarSheets(books)
                .current(file.car().id())
                .map(sheet -> sheet.by() + " kept number " + sheet.number() + " of this car’s sheet meanwhile ("
                        + sheet.why() + ").")
                .orElse("");
    }

    List<CardRow> rows(Overlay overlay, Plan plan, List<String> split, Typed typed) {
        Read bare = shelf.text("bare", overlay.bare().write());
        Assembly below = bare instanceof Read.Sheet sheet ? sheet.assembly() : plan.assembly();
        return new CardRows(overlay, below, new LinkedHashSet<>(split), typed.values(), typed.faults())
                .of(plan, words());
    }

    CardView view(CardFile file, Plan plan, List<String> split, Typed typed) {
        Overlay own = file.overlay() == null ? Overlay.on("none", "", List.of()) : file.overlay();
        String others = typed.faults().getOrDefault("", "");
        return new CardView(
                file.car().called(),
                file.car().id(),
                file.job(),
                file.seen(),
                file.question(),
                Headline.renewed(plan),
                file.seen() == 0 ? own.bases() : List.of(),
                titles(own),
                rows(own, plan, split, typed),
                typed.said(),
                others.isEmpty() ? List.of() : List.of(others.split("\n", -1)),
                split,
                parts(plan.assembly()),
                kinds(),
                own.absent("joints"),
                new CarSheets(books).history(file.car().id()),
                words().torqueUnit(),
                file.address().replace("/card?", "/card.pdf?"),
                file.question().address("/plan"));
    }

    private String titles(Overlay own) {
        List<String> titles = new ArrayList<>();
        for (String base : own.bases()) {
            String kept =
                    new KeptSheets(books).find(base).map(sheet -> sheet.title()).orElse(base);
            titles.add(
                    shelf.read(base) instanceof Read.Sheet sheet
                            ? sheet.assembly().sheet().title()
                            : kept);
        }
        return String.join(", with ", titles);
    }

    private static List<SheetView.Choice> parts(Assembly assembly) {
        Map<String, SheetView.Choice> parts = new LinkedHashMap<>();
        for (Part part : assembly.parts()) {
            String id = part.entry().id();
            parts.putIfAbsent(id, new SheetView.Choice(id, part.entry().name(), part.isBody()));
        }
        return List.copyOf(parts.values());
    }

    private static List<String> kinds() {
        List<String> kinds = new ArrayList<>();
        for (JointKind kind : JointKind.values()) {
            kinds.add(kind.word());
        }
        return kinds;
    }

    JobHead head(CardFile file, Map<String, String> settings) {
        String number = file.job() == null ? "" : file.job().number();
        CarLine car = new CarLine(
                (file.car().make() + " " + file.car().model() + " " + file.car().built()).strip(),
                file.car().plate(),
                file.car().vin(),
                "",
                "");
        return new JobHead(
                number, LocalDate.now(books.clock()), PaperPages.letterhead(settings), car, CustomerLine.NONE, "");
    }
}
