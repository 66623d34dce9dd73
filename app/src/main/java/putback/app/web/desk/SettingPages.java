package putback.app.web.desk;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.job.AskPages;
import putback.app.web.job.PaperPages;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.Settings;

/** What a garage settles once: whose papers they are, what an hour costs, how figures are written. */
public final class SettingPages implements PageGroup {
    /** Every setting there is; nothing else is kept. */
    static final List<String> NAMES = List.of(
            "garage",
            "address",
            "phone",
            "email",
            "tax-number",
            "registration",
            "rate",
            "tax",
            "tax-on",
            "markup",
            "sundries",
            "currency",
            "currency-place",
            "paper",
            "decimal",
            "dates",
            "torque",
            "distance",
            "warranty",
            "old-parts",
            "teardown",
            "reassembly",
            "storage",
            "complaints-to");

    private final Replies replies;
    private final Books books;

    public SettingPages(Replies replies, Books books) {
        this.replies = replies;
        this.books = books;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/settings", context -> show(context, new Settings(books).all(), ""));
        routes.post("/settings", this::keep);
    }

    private void show(Context context, Map<String, String> values, String said) {
        replies.show(context, "settings.jte", new SettingView(values, said));
    }

    private void keep(Context context) {
        Form form = Form.of(context);
        for (String amount : List.of("rate", "sundries")) {
            if (AskPages.money(form.text(amount)).equals("?")) {
                refuse(context, form, amount, "an amount of money, such as 60.00");
                return;
            }
        }
        for (String percent : List.of("tax", "markup")) {
            if (!form.text(percent).isEmpty() && !form.text(percent).matches("\\d{1,3}([.,]\\d{1,4})?")) {
                refuse(context, form, percent, "a number of percent, such as 20");
                return;
            }
        }
        Map<String, String> before = new Settings(books).all();
        books.write(change -> {
            for (String name : NAMES) {
                String value = form.text(name);
                if (!value.equals(PaperPages.text(before, name))) {
                    new Settings(books).set(change, name, value);
                    new Audit(books).add(change, form.who(), "", "setting " + name, value);
                }
            }
            return before;
        });
        context.redirect("/settings", HttpStatus.SEE_OTHER);
    }

    private void refuse(Context context, Form form, String name, String right) {
        context.status(422);
        show(context, form.values(), name + ": \"" + form.text(name) + "\" is not " + right + ". Nothing was kept.");
    }
}
