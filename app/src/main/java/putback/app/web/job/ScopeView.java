package putback.app.web.job;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.app.web.planning.SheetView;
import putback.store.sheets.Read;

/**
 * What can be renewed, to be ticked for a job.
 *
 * @param sheets that may be chosen: the car's own first
 * @param chosen null as long as none is
 */
public record ScopeView(
        JobFile file, List<SheetView> sheets, @Nullable SheetView chosen) {
    public ScopeView {
        sheets = List.copyOf(sheets);
    }

    static ScopeView of(JobFile file, Shelf shelf, @Nullable String asked) {
        List<SheetView> sheets = new ArrayList<>();
        String own = Shelf.OF_CAR + file.car().id();
        if (shelf.read(own) instanceof Read.Sheet sheet) {
            sheets.add(SheetView.of(Question.of(own, List.of(), "both"), sheet.assembly()));
        }
        sheets.addAll(SheetView.all(shelf));
        String name = asked != null ? asked : file.sheet();
        List<String> renew =
                name.equals(file.sheet()) ? List.of(file.job().scope().renew()) : List.of();
        Question question = Question.of(name, renew, file.job().scope().side());
        SheetView chosen =
                shelf.read(name) instanceof Read.Sheet sheet ? SheetView.of(question, sheet.assembly()) : null;
        return new ScopeView(file, sheets, chosen);
    }
}
