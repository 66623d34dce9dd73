package putback.app.web.card;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.papers.Papers;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.app.web.job.PaperPages;
import putback.plan.Plan;
import putback.store.books.Books;
import putback.store.books.CarSheet;
import putback.store.books.CarSheets;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.books.Scope;
import putback.store.books.Settings;
import putback.store.database.Change;
import putback.store.overlay.Overlay;
import putback.store.sheets.Read;

/** The fill-in card of a car: what is measured and looked up at the car becomes its own sheet. */
public final class CardPages implements PageGroup {
    private final Replies replies;
    private final Books books;
    private final Shelf shelf;
    private final Cards cards;

    public CardPages(Replies replies, Books books, Shelf shelf) {
        this.replies = replies;
        this.books = books;
        this.shelf = shelf;
        cards = new Cards(books, shelf);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/car/{id}/card", context -> with(context, context.queryParamMap(), file -> show(context, file)));
        routes.get("/car/{id}/card.pdf", context -> with(context, context.queryParamMap(), file -> pdf(context, file)));
        routes.post("/car/{id}/card", context -> with(context, context.formParamMap(), file -> keep(context, file)));
        routes.get("/card-part", this::part);
        new CarSheetPages(replies, books, shelf).add(routes);
        new NewCarPages(replies, books, shelf).add(routes);
    }

    private void with(Context context, Map<String, List<String>> asked, java.util.function.Consumer<CardFile> work) {
        String id = context.pathParam("id");
        CardFile file = CardFile.open(books, id, asked);
        if (file == null) {
            replies.missing(context, "car", id);
        } else {
            work.accept(file);
        }
    }

    private void show(Context context, CardFile file) {
        Overlay own = file.overlay();
        if (own == null || file.question().renew().isEmpty()) {
            replies.show(context, "card-choose.jte", CardChoice.of(file, shelf, books));
            return;
        }
        Answer answer = file.answer(own, shelf);
        if (answer instanceof Answer.Refused refused) {
            replies.refuse(context, refused);
            return;
        }
        List<String> split = context.queryParams("split");
        replies.show(context, "card.jte", cards.view(file, CardFile.plan(answer), split, Cards.Typed.NOTHING));
    }

    /** What can be said of one torque, while it is typed. */
    private void part(Context context) {
        CardCheck check = CardCheck.of(Replies.typed(context), cards.words());
        replies.page(context, replies.pages().fill("card-check.jte", "check", check));
    }

    private void pdf(Context context, CardFile file) {
        Overlay own = file.overlay();
        Answer answer = own == null
                ? new Answer.Refused(422, "No card yet", List.of("Choose the sheet that is nearest to the car first."))
                : file.answer(own, shelf);
        if (answer instanceof Answer.Refused refused) {
            replies.refuse(context, refused);
            return;
        }
        Map<String, String> settings = new Settings(books).all();
        context.contentType("application/pdf");
        context.header("Content-Disposition", "inline; filename=\"card.pdf\"");
        context.result(
                Papers.fillInCard(CardFile.plan(answer), cards.head(file, settings), PaperPages.style(settings)));
    }

    private void keep(Context context, CardFile file) {
        Form form = Form.of(context);
        Overlay now = file.overlay();
        Overlay seen = cards.seen(file, form.number("seen"));
        if (now == null || seen == null || !form.fault().isEmpty()) {
            String said = form.fault().isEmpty() ? "Choose the sheet that is nearest to the car first." : form.fault();
            replies.refuse(context, new Answer.Refused(422, "Not kept yet", List.of(said)));
            return;
        }
        List<String> split = context.formParams("split");
        Answer before = file.at(form.number("seen"), seen).answer(seen, shelf);
        if (before instanceof Answer.Refused refused) {
            replies.refuse(context, refused);
            return;
        }
        List<CardRow> shown = cards.rows(seen, CardFile.plan(before), split, Cards.Typed.NOTHING);
        CardEdit edit = CardEdit.of(shown, now, form, cards.words());
        if (form.number("seen") != file.seen()) {
            overtaken(context, file, edit, split);
            return;
        }
        CardAction action =
                CardAction.of(form, edit.overlay(), CardFile.plan(before).assembly());
        Map<String, String> told = told(file, edit, action);
        if (!told.isEmpty()) {
            context.status(422);
            Cards.Typed typed = new Cards.Typed(edit.touched(), told, "Nothing is kept yet; what you typed is here.");
            replies.show(context, "card.jte", cards.view(file, CardFile.plan(before), split, typed));
            return;
        }
        String why = action.why().isEmpty() ? edit.touched().size() + " figures on the card" : action.why();
        Saved<CarSheet> saved = books.write(change -> write(change, file, action.overlay(), form.who(), why));
        if (saved instanceof Saved.Done<CarSheet>) {
            String to = form.text("to").equals("plan") ? file.question().address("/plan") : file.address();
            String also = form.text("to").equals("plan") ? "" : action.address();
            context.redirect(to + also, HttpStatus.SEE_OTHER);
        } else {
            CardFile theirs = CardFile.open(books, file.car().id(), context.formParamMap());
            overtaken(context, theirs == null ? file : theirs, edit, split);
        }
    }

    /** What is wrong with the car as it would be kept: by field, under an empty name what belongs to none. */
    private Map<String, String> told(CardFile file, CardEdit edit, CardAction action) {
        if (!action.fault().isEmpty()) {
            return Map.of("", action.fault());
        }
        Read read = shelf.text(file.question().sheet(), action.overlay().write());
        if (read instanceof Read.Faulty faulty) {
            return edit.told(faulty.faults());
        }
        return Answer.to(file.question(), (Read.Sheet) read) instanceof Answer.Refused refused
                ? Map.of("", String.join("\n", refused.lines()))
                : Map.of();
    }

    private Saved<CarSheet> write(Change change, CardFile file, Overlay overlay, String by, String why) {
        if (file.seen() > 0 && overlay.equals(file.overlay())) {
            return new CarSheets(books)
                    .current(file.car().id())
                    .<Saved<CarSheet>>map(Saved.Done::new)
                    .orElse(new Saved.Gone<>());
        }
        Saved<CarSheet> saved =
                new CarSheets(books).add(change, file.car().id(), file.seen(), overlay.write(), by, why);
        if (saved instanceof Saved.Done
                && file.job() != null
                && !file.job().scope().sheet().equals("car")) {
            Scope scope = file.job().scope();
            new Jobs(books)
                    .save(
                            change,
                            file.job()
                                    .with(new Scope("car", scope.renew(), scope.side(), scope.terms(), scope.rust())));
        }
        return saved;
    }

    private void overtaken(Context context, CardFile file, CardEdit edit, List<String> split) {
        @Nullable Overlay now = file.overlay();
        Answer answer =
                now == null ? new Answer.Refused(409, "Gone", List.of("The sheet is gone.")) : file.answer(now, shelf);
        if (answer instanceof Answer.Refused refused) {
            replies.refuse(context, refused);
            return;
        }
        context.status(409);
        Plan plan = CardFile.plan(answer);
        String said = cards.lastWord(file) + " What you typed is here beside theirs, and not kept yet: look at it,"
                + " then keep it.";
        replies.show(
                context, "card.jte", cards.view(file, plan, split, new Cards.Typed(edit.touched(), Map.of(), said)));
    }
}
