package putback.app.web.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import putback.app.web.frame.Form;
import putback.app.web.frame.Shelf;
import putback.store.books.Arrival;
import putback.store.books.Books;
import putback.store.books.Heights;
import putback.store.books.Job;
import putback.store.books.Rechecks;
import putback.store.books.Scope;
import putback.store.database.Change;

/** What the forms of a job's page say. */
final class JobForms {
    private static final List<String> TERMS =
            List.of("rate", "tax", "tax-on", "markup", "sundries", "subcontracted", "ceiling");
    /** A common choice before the usual time of failures begins: 50 km or a week. Common practice; sources differ. */
    private static final int RECHECK_DAYS = 7;

    private static final int RECHECK_DISTANCE = 50;

    private JobForms() {}

    static Arrival arrival(Form form) {
        return new Arrival(
                form.text("complaint"),
                form.text("conditions"),
                form.text("distance"),
                form.text("distance-out"),
                new Heights(form.text("fl"), form.text("fr"), form.text("rl"), form.text("rr")),
                form.text("promised"));
    }

    static Job terms(JobFile file, Form form) {
        Scope scope = file.job().scope();
        List<String> terms = new ArrayList<>();
        for (String name : TERMS) {
            String value = form.text(name).replace("&", "").replace("=", "");
            if (!value.isEmpty()) {
                terms.add(name + "=" + value);
            }
        }
        return file.job()
                .with(new Scope(scope.sheet(), scope.renew(), scope.side(), String.join("&", terms), scope.rust()));
    }

    static Job scope(JobFile file, Form form) {
        Scope scope = file.job().scope();
        String side = form.oneOf("side", Set.of("left", "right", "both"), "both");
        String sheet = form.text("sheet").startsWith(Shelf.OF_CAR) ? "car" : form.text("sheet");
        return file.job().with(new Scope(sheet, form.all("renew"), side, scope.terms(), scope.rust()));
    }

    static void bookRecheck(Books books, Change change, JobFile file) {
        String due = LocalDate.now(books.clock()).plusDays(RECHECK_DAYS).toString();
        String out = file.job().arrival().distanceOut().replaceAll("[^0-9]", "");
        String distance =
                out.isEmpty() || out.length() > 9 ? "" : String.valueOf(Long.parseLong(out) + RECHECK_DISTANCE);
        new Rechecks(books).add(change, file.job().id(), due, distance, "wheel fasteners");
    }
}
