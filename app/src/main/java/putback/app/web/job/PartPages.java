package putback.app.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.plan.Plan;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.PartLine;
import putback.store.books.PartLines;
import putback.store.books.PartPrice;
import putback.store.books.PartPrices;
import putback.store.books.Saved;
import putback.store.books.Settings;
import putback.store.database.Change;

/** A job's parts: what they cost this garage, which are its own, and where each is on its way. */
public final class PartPages implements PageGroup {
    private static final Set<String> STATES = Set.of("to order", "ordered", "arrived", "compared");
    private static final String TAKE_OUT = "out";
    private static final int MOST = 99;

    private final Replies replies;
    private final Books books;
    private final Shelf shelf;
    private final JobShown shown;

    public PartPages(Replies replies, Books books, Shelf shelf, Ledgers ledgers) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
        shown = new JobShown(replies, books, shelf, ledgers);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post("/job/{id}/parts", context -> with(context, this::putDown));
        routes.post("/job/{id}/prices", context -> with(context, this::prices));
        routes.post("/job/{id}/part/{row}", context -> with(context, this::part));
    }

    /** Does something with a job's parts. */
    private interface Work {
        void on(Context context, JobFile file, Form form);
    }

    private void with(Context context, Work work) {
        String id = context.pathParam("id");
        JobFile file = JobFile.open(books, id);
        if (file == null) {
            replies.missing(context, "job", id);
            return;
        }
        Form form = Form.of(context);
        if (!file.closed().isEmpty()) {
            shown.refuse(context, file, "Not kept: " + file.closed() + ".", new Typed("prices", form.values()));
        } else if (form.fault().isEmpty()) {
            work.on(context, file, form);
        } else {
            shown.refuse(context, file, "Not kept yet: " + form.fault(), new Typed("prices", form.values()));
        }
    }

    private void back(Context context, JobFile file) {
        context.redirect("/job/" + file.job().id() + "#parts", HttpStatus.SEE_OTHER);
    }

    private List<PartRow> rows(JobFile file) {
        Plan plan = Quoting.of(file, shelf, new Settings(books).all()).plan();
        return PartRow.of(file, plan);
    }

    /** Puts down what the plan needs and nobody has put down yet, with the price that was paid before. */
    private void putDown(Context context, JobFile file, Form form) {
        List<PartRow> rows = rows(file);
        if (!file.job().scope().named()) {
            shown.refuse(context, file, "Nothing is named that is to be renewed; tick it first.", Typed.NOTHING);
            return;
        }
        books.write(change -> {
            rows.stream().filter(row -> row.line() == null).forEach(row -> putDown(change, file, row, row.each(), ""));
            return rows.size();
        });
        back(context, file);
    }

    private void putDown(Change change, JobFile file, PartRow row, String each, String by) {
        PartLine wanted =
                PartLine.wanted(file.job().id(), row.key().substring("need ".length()), row.name(), row.count());
        String whose = by.isEmpty() && !each.isEmpty() ? whose(file, row) : by;
        new PartLines(books).add(change, wanted.priced(each, whose));
    }

    private static String whose(JobFile file, PartRow row) {
        String part = PartPrices.part(row.key().substring("need ".length()), row.name());
        for (PartPrice price : file.paid()) {
            if (price.part().equals(part)) {
                return price.by();
            }
        }
        return "";
    }

    /** A row whose price somebody has typed. */
    private record Given(PartRow row, String each) {}

    private void prices(Context context, JobFile file, Form form) {
        List<Given> given = new ArrayList<>();
        for (PartRow row : rows(file)) {
            String each = AskPages.money(form.text("price " + row.key()));
            if (each.equals("?")) {
                refuse(context, file, form, row.name(), form.text("price " + row.key()));
                return;
            }
            if (form.values().containsKey("price " + row.key()) && !each.equals(row.each())) {
                given.add(new Given(row, each));
            }
        }
        String own = form.text("own");
        String price = AskPages.money(form.text("own-price"));
        int count = form.text("own-count").isEmpty() ? 1 : form.number("own-count");
        if (price.equals("?") || count < 1 || count > MOST) {
            refuse(
                    context,
                    file,
                    form,
                    own.isEmpty() ? "the part of your own" : own,
                    price.equals("?") ? form.text("own-price") : form.text("own-count") + " times");
            return;
        }
        boolean kept = books.write(change -> {
            boolean all = true;
            for (Given one : given) {
                all &= keep(change, file, form, one);
            }
            if (!own.isEmpty()) {
                addOwn(change, file, own, count, price, form.who());
            }
            return all;
        });
        if (kept) {
            back(context, file);
        } else {
            replies.overtaken(context, "/job/" + file.job().id(), form);
        }
    }

    private void refuse(Context context, JobFile file, Form form, String part, String typed) {
        String said = "Not kept yet: \"" + typed + "\" for " + part
                + " is not understood. Write a price such as 38 or 38.50 and a count from 1 to " + MOST + ".";
        shown.refuse(context, file, said, new Typed("prices", form.values()));
    }

    private boolean keep(Change change, JobFile file, Form form, Given one) {
        PartLine line = one.row().line();
        String by = one.each().isEmpty() ? "" : form.who();
        if (line == null) {
            putDown(change, file, one.row(), one.each(), by);
        } else {
            PartLine wanted = line.priced(one.each(), by)
                    .at(form.number("version " + one.row().key()));
            if (!(new PartLines(books).save(change, wanted) instanceof Saved.Done)) {
                return false;
            }
        }
        audit(change, file, form.who(), one.row().name(), one.row().each(), one.each());
        if (!one.each().isEmpty()) {
            String name = one.row().name();
            boolean own = line != null && line.isOwn();
            String id = line == null ? one.row().key().substring("need ".length()) : line.part();
            String part = own ? PartPrices.own(name) : PartPrices.part(id, name);
            remember(change, file, new PartPrice("", part, own, name, one.row().count(), one.each(), by));
        }
        return true;
    }

    /** A price moves what the owner pays: who set it stands in the job's history. */
    private void audit(Change change, JobFile file, String who, String part, String from, String to) {
        String words = part + ", " + (from.isEmpty() ? "none" : from) + " to " + (to.isEmpty() ? "none" : to);
        new Audit(books).add(change, who, file.job().id(), "price of one", words);
    }

    private void addOwn(Change change, JobFile file, String name, int count, String price, String by) {
        PartLine wanted = PartLine.wanted(file.job().id(), "", name, count);
        new PartLines(books).add(change, price.isEmpty() ? wanted : wanted.priced(price, by));
        if (!price.isEmpty()) {
            remember(change, file, new PartPrice("", PartPrices.own(name), true, name, count, price, by));
            audit(change, file, by, name, "", price);
        }
    }

    /** The next job of this model is offered it. */
    private void remember(Change change, JobFile file, PartPrice paid) {
        new PartPrices(books)
                .keep(
                        change,
                        new PartPrice(
                                PartPrices.model(file.car()),
                                paid.part(),
                                paid.own(),
                                paid.name(),
                                paid.count(),
                                paid.price(),
                                paid.by()));
    }

    private void part(Context context, JobFile file, Form form) {
        String row = context.pathParam("row");
        for (PartLine line : file.parts()) {
            if (line.id().equals(row)) {
                PartLine seen = line.at(form.number("version"));
                boolean kept = books.write(change -> form.text("state").equals(TAKE_OUT)
                        ? new PartLines(books).remove(change, seen)
                        : new PartLines(books).save(change, moved(seen, form)) instanceof Saved.Done);
                if (kept) {
                    back(context, file);
                } else {
                    replies.overtaken(context, "/job/" + file.job().id(), form);
                }
                return;
            }
        }
        shown.refuse(context, file, "There is no such part on this job any more.", Typed.NOTHING);
    }

    private static PartLine moved(PartLine line, Form form) {
        String state = form.oneOf("state", STATES, line.state());
        boolean looked = state.equals("arrived") && form.text("looked").equals("right");
        String supplier = form.text("supplier").isEmpty() ? line.supplier() : form.text("supplier");
        return line.at(supplier, state, looked ? form.who() : state.equals("compared") ? line.lookedBy() : "");
    }
}
