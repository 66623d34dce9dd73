package putback.app.web.door;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URI;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Cookies;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Visitor;

/** Who is working, where nobody has to sign in: asked once and kept at the browser. */
public final class MePages implements PageGroup {
    private static final long YEAR = Duration.ofDays(365).toSeconds();

    @Override
    public void add(RoutesConfig routes) {
        routes.post("/me", MePages::keep);
    }

    private static void keep(Context context) {
        String name = Visitor.named(Form.of(context).text("name"));
        Cookies.set(context, Visitor.COOKIE, Visitor.carried(name), name.isEmpty() ? 0 : YEAR, false);
        context.redirect(back(context.header("Referer")), HttpStatus.SEE_OTHER);
    }

    /** The page that was open, never one of another place. */
    static String back(@Nullable String referer) {
        try {
            URI page = URI.create(referer == null ? "/" : referer);
            String path = page.getRawPath();
            if (path == null || !path.startsWith("/") || path.startsWith("//") || path.contains("\\")) {
                return "/";
            }
            return page.getRawQuery() == null ? path : path + "?" + page.getRawQuery();
        } catch (IllegalArgumentException notAnAddress) {
            return "/";
        }
    }
}
