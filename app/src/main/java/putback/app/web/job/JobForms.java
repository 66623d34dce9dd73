package putback.app.web.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import putback.app.web.frame.Form;
import putback.app.web.frame.Shelf;
import putback.quantity.Parsed;
import putback.store.books.Books;
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

    static Parsed<Job> arrival(JobFile file, Form form) {
        return ArrivalForm.read(form).map(file.job()::with);
    }

    static Parsed<Job> terms(JobFile file, Form form) {
        if (!file.closed().isEmpty()) {
            return new Parsed.Refused<>(file.closed());
        }
        Scope scope = file.job().scope();
        List<String> terms = new ArrayList<>();
        for (String name : TERMS) {
            String value = form.text(name).replace("&", "").replace("=", "");
            if (!value.isEmpty()) {
                terms.add(name + "=" + value);
            }
        }
        return new Parsed.Value<>(file.job()
                .with(new Scope(scope.sheet(), scope.renew(), scope.side(), String.join("&", terms), scope.rust())));
    }

    static Parsed<Job> scope(JobFile file, Form form) {
        if (!file.closed().isEmpty()) {
            return new Parsed.Refused<>(file.closed());
        }
        if (form.all("renew").isEmpty()) {
            return new Parsed.Refused<>("tick at least one thing that is to be renewed");
        }
        Scope scope = file.job().scope();
        String side = form.oneOf("side", Set.of("left", "right", "both"), "both");
        String sheet = form.text("sheet").startsWith(Shelf.OF_CAR) ? "car" : form.text("sheet");
        return new Parsed.Value<>(
                file.job().with(new Scope(sheet, form.all("renew"), side, scope.terms(), scope.rust())));
    }

    static void bookRecheck(Books books, Change change, JobFile file) {
        String due = LocalDate.now(books.clock()).plusDays(RECHECK_DAYS).toString();
        String out = file.job().arrival().distanceOut().replaceAll("[^0-9]", "");
        String distance =
                out.isEmpty() || out.length() > 9 ? "" : String.valueOf(Long.parseLong(out) + RECHECK_DISTANCE);
        new Rechecks(books).add(change, file.job().id(), due, distance, "wheel fasteners");
    }
}
