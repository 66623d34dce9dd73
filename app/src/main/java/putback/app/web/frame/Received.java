package putback.app.web.frame;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What was typed into forms and is kept here now. A page holds on to what is typed until it hears so, since a connection
 * may be lost on the way there or back; what then comes again is not written down again.
 */
public final class Received {
    private static final String COOKIE = "putback-has";
    private static final int SECONDS = 600;
    private static final int MOST = 2000;

    private final Map<String, String> places = new LinkedHashMap<>();

    /** Leads to where a form led that has been answered already. */
    public void look(Context context) {
        String id = id(context);
        String place = id == null ? null : place(id);
        if (id != null && place != null) {
            tell(context, id);
            context.redirect(place, HttpStatus.SEE_OTHER);
            context.skipRemainingHandlers();
        }
    }

    /** After a form was answered: only what was kept leads on to another page. */
    public void remember(Context context) {
        String id = id(context);
        String place = context.res().getHeader("Location");
        if (id != null && place != null && context.statusCode() == HttpStatus.SEE_OTHER.getCode()) {
            keep(id, place);
            tell(context, id);
        }
    }

    private static @Nullable String id(Context context) {
        String type = context.contentType();
        boolean isForm = type != null && type.startsWith("application/x-www-form-urlencoded");
        if (!isForm || !context.req().getMethod().equals("POST")) {
            return null;
        }
        String id = context.formParam("typed-id");
        return id != null && id.matches("[a-z0-9]{8,24}") ? id : null;
    }

    private synchronized @Nullable String place(String id) {
        return places.get(id);
    }

    private synchronized void keep(String id, String place) {
        places.put(id, place);
        if (places.size() > MOST) {
            places.remove(places.keySet().iterator().next());
        }
    }

    private static void tell(Context context, String id) {
        Cookie cookie = new Cookie(COOKIE, id, "/", SECONDS, context.scheme().equals("https"));
        cookie.setSameSite(SameSite.STRICT);
        context.cookie(cookie);
    }
}
