package putback.app.web.frame;

import io.javalin.http.Context;

/** The cookies that pages set: for this server alone, never sent along from another site's page, not read by scripts. */
public final class Cookies {
    private Cookies() {}

    /**
     * Sets one.
     *
     * @param value of letters, digits, hyphens and underlines
     * @param seconds how long it is kept, 0 to take it away
     */
    public static void set(Context context, String name, String value, long seconds, boolean secure) {
        if (!value.matches("[A-Za-z0-9_-]*")) {
            throw new IllegalArgumentException("a cookie's value has other letters");
        }
        context.res()
                .addHeader(
                        "Set-Cookie",
                        name + "=" + value + "; Path=/; Max-Age=" + seconds + "; HttpOnly; SameSite=Strict"
                                + (secure ? "; Secure" : ""));
    }
}
