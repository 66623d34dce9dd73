package putback.app.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.plan.Plan;
import putback.quantity.Shown;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.books.Scope;
import putback.store.books.Settings;

/** One walk round the car before the price: how rusty it is, and the fixings of this job each by itself. */
public final class RustPages implements PageGroup {
    private final Replies replies;
    private final Books books;
    private final Shelf shelf;

    public RustPages(Replies replies, Books books, Shelf shelf) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/job/{id}/rust", this::show);
        routes.post("/job/{id}/rust", this::keep);
    }

    private @Nullable JobFile file(Context context) {
        String id = context.pathParam("id");
        JobFile file = JobFile.open(books, id);
        if (file == null) {
            replies.missing(context, "job", id);
        }
        return file;
    }

    private @Nullable Plan plan(Context context, JobFile file) {
        if (!file.closed().isEmpty()) {
            String why = "This is not to be changed: " + file.closed() + ".";
            replies.refuse(context, new Answer.Refused(422, "Handed over already", List.of(why)));
            return null;
        }
        Quoting quoting = Quoting.of(file, shelf, new Settings(books).all());
        if (quoting.plan() == null) {
            String why = quoting.fault().isEmpty() ? "Tick what is to be renewed first." : quoting.fault();
            replies.refuse(context, new Answer.Refused(422, "No fixings yet", List.of(why)));
        }
        return quoting.plan();
    }

    private void show(Context context) {
        JobFile file = file(context);
        Plan plan = file == null ? null : plan(context, file);
        if (file != null && plan != null) {
            replies.show(context, "rust.jte", RustView.of(file, plan));
        }
    }

    private void keep(Context context) {
        JobFile file = file(context);
        Plan plan = file == null ? null : plan(context, file);
        if (file == null || plan == null) {
            return;
        }
        Form form = Form.of(context);
        String wrong = wrong(form);
        if (!wrong.isEmpty()) {
            replies.refuse(context, new Answer.Refused(422, "Not kept yet", List.of(wrong)));
            return;
        }
        List<String> words = new ArrayList<>();
        words.add(grade(form, "rust").isEmpty() ? "0" : grade(form, "rust"));
        for (RustView.Row row : RustView.of(file, plan).rows()) {
            for (RustView.Cell cell : row.cells()) {
                String grade = grade(form, "rust " + cell.joint());
                if (!grade.isEmpty()) {
                    words.add(cell.joint() + "=" + grade);
                }
            }
        }
        Scope scope = file.job().scope();
        Scope rusty = new Scope(scope.sheet(), scope.renew(), scope.side(), scope.terms(), String.join(",", words));
        Job wanted = file.job().with(rusty).at(form.number("version"));
        Saved<Job> saved = books.write(change -> {
            Saved<Job> kept = new Jobs(books).save(change, wanted);
            if (kept instanceof Saved.Done<Job>) {
                String said = Rust.said(rusty, plan.assembly().joints());
                new Audit(books).add(change, form.who(), wanted.id(), "rust", said);
            }
            return kept;
        });
        if (saved instanceof Saved.Done<Job>) {
            context.redirect("/job/" + wanted.id(), HttpStatus.SEE_OTHER);
        } else {
            replies.overtaken(context, "/job/" + wanted.id(), form);
        }
    }

    /** What is no grade, in words; empty where all are, or are left out. */
    private static String wrong(Form form) {
        for (Map.Entry<String, String> field : form.values().entrySet()) {
            String value = field.getValue().strip();
            boolean asked = field.getKey().equals("rust") || field.getKey().startsWith("rust ");
            if (asked && !value.isEmpty() && !value.matches("[0-4]")) {
                return Shown.text(value)
                        + " is no grade of rust; grades go from 0, clean, to 4, wasted. The grades that"
                        + " were there stay.";
            }
        }
        return "";
    }

    private static String grade(Form form, String name) {
        String grade = form.text(name);
        return grade.matches("[0-4]") ? grade : "";
    }
}
