package putback.app.web.door;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Visitor;
import putback.store.books.Books;
import putback.store.books.Person;
import putback.store.books.Sessions;

/**
 * Lets those in who are signed in, where others of the network can reach the pages. What is not named here is closed,
 * so that a page which somebody forgets is closed too.
 */
public final class Gate {
    /** A browser takes a cookie of such a name only over HTTPS, for one machine and all its pages. */
    public static final String SESSION = "__Host-putback";

    private static final Set<String> FOR_ALL =
            Set.of("/sign-in", "/trust", "/authority.crt", "/page.css", "/page.js", "/typed.js", "/mark.svg");
    private static final Set<String> WITHOUT_HTTPS = Set.of("/trust", "/authority.crt", "/page.css", "/mark.svg");
    private static final List<String> BY_TOKEN = List.of("/said/", "/pair/");
    private static final List<String> FOR_OWNERS = List.of("/settings", "/people", "/devices", "/audit");

    private final Replies replies;
    private final Sessions sessions;

    public Gate(Replies replies, Books books) {
        this.replies = replies;
        sessions = new Sessions(books);
    }

    /** Turns a request away, or lets it on to its page. */
    public void look(Context context) {
        String path = context.path();
        if (!context.scheme().equals("https")) {
            if (!WITHOUT_HTTPS.contains(path)) {
                refuse(
                        context,
                        403,
                        "Only over HTTPS",
                        "This address only explains how a phone learns to trust the garage: /trust.");
            }
            return;
        }
        Person person = signedIn(context);
        if (person != null) {
            Visitor.signedIn(person).arrives(context);
            if (!person.isOwner() && FOR_OWNERS.stream().anyMatch(page -> isIn(page, path))) {
                refuse(context, 403, "Only the owner", "Settings, people, devices and who did what are the owner's.");
            }
        } else if (!isForAll(path)) {
            turnAway(context);
        }
    }

    static boolean isForAll(String path) {
        return FOR_ALL.contains(path)
                || BY_TOKEN.stream().anyMatch(start -> path.startsWith(start) && path.indexOf('/', start.length()) < 0);
    }

    private static boolean isIn(String page, String path) {
        return path.equals(page) || path.startsWith(page + "/");
    }

    private @Nullable Person signedIn(Context context) {
        String token = context.cookie(SESSION);
        return token == null ? null : sessions.person(token).orElse(null);
    }

    private void turnAway(Context context) {
        if (context.req().getMethod().equals("POST") || Replies.isPart(context)) {
            refuse(context, 401, "Sign in first", "Nothing was done. Go to the first page and sign in.");
            return;
        }
        String query = context.queryString();
        String to = context.path() + (query == null ? "" : "?" + query);
        context.redirect(
                to.equals("/") ? "/sign-in" : "/sign-in?to=" + URLEncoder.encode(to, StandardCharsets.UTF_8),
                HttpStatus.SEE_OTHER);
        context.skipRemainingHandlers();
    }

    private void refuse(Context context, int status, String heading, String line) {
        replies.refuse(context, new Answer.Refused(status, heading, List.of(line)));
        context.skipRemainingHandlers();
    }
}
