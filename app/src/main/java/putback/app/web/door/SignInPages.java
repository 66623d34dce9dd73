package putback.app.web.door;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Visitor;
import putback.store.books.Books;
import putback.store.books.Devices;

/** Signing in and out, and pairing a phone. */
public final class SignInPages implements PageGroup {
    private final Replies replies;
    private final Books books;
    private final SigningIn signing;

    public SignInPages(Replies replies, Books books) {
        this.replies = replies;
        this.books = books;
        signing = new SigningIn(books);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/sign-in", context -> show(context, "", context.queryParam("to")));
        routes.post("/sign-in", this::signIn);
        routes.post("/sign-out", context -> {
            signing.end(context);
            context.redirect("/sign-in", HttpStatus.SEE_OTHER);
        });
        routes.get("/pair/{code}", context -> pairing(context, ""));
        routes.post("/pair/{code}", this::pair);
    }

    private void show(Context context, String said, @org.jspecify.annotations.Nullable String to) {
        replies.show(context, "sign-in.jte", new SignInView("", MePages.back(to), said));
    }

    private void signIn(Context context) {
        SigningIn.Tried tried = signing.tried(context);
        String to = MePages.back(context.formParam("to"));
        if (tried.person() == null) {
            context.status(tried.status());
            context.attribute(Replies.TOLD, true);
            show(context, tried.said(), to);
            return;
        }
        signing.begin(context, tried.person());
        context.redirect(to, HttpStatus.SEE_OTHER);
    }

    private void pairing(Context context, String said) {
        String code = context.pathParam("code");
        if (new Devices(books).holds(code)) {
            replies.show(context, "sign-in.jte", new SignInView(code, "/", said));
        } else {
            replies.refuse(
                    context,
                    new Answer.Refused(
                            404,
                            "This code no longer holds",
                            List.of("A code pairs one phone, within ten minutes. Ask the owner for a new one.")));
        }
    }

    private void pair(Context context) {
        String code = context.pathParam("code");
        if (!new Devices(books).holds(code)) {
            pairing(context, "");
            return;
        }
        SigningIn.Tried tried = signing.tried(context);
        if (tried.person() == null) {
            context.status(tried.status());
            pairing(context, tried.said());
            return;
        }
        String name = Visitor.named(Form.of(context).text("device"));
        if (signing.pair(context, tried.person(), code, name.isEmpty() ? "a phone" : name)) {
            context.redirect("/", HttpStatus.SEE_OTHER);
        } else {
            pairing(context, "");
        }
    }
}
