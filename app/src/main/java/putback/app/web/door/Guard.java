package putback.app.web.door;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.app.web.frame.Replies;

/** What is turned away before any page looks at it. */
public final class Guard {
    /** Only files are longer: a filled form is some thousand letters. */
    public static final long LONGEST_FORM = 1_000_000;

    private static final long MOST_DROPPED = 8 * LONGEST_FORM;

    private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST");
    private static final String POLICY = "default-src 'self'; style-src 'self' 'unsafe-inline'; object-src 'none';"
            + " base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    private final Set<String> names;

    /**
     * A guard.
     *
     * @param names by which this machine may be called, without a port
     */
    public Guard(Set<String> names) {
        this.names = Set.copyOf(names);
    }

    /** No page may load, run or be framed by anything from elsewhere. */
    public void look(Context context) {
        context.header("Content-Security-Policy", POLICY);
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "same-origin");
        context.header("Cache-Control", "no-store");
        if (!names.contains(name(context.host()))) {
            refuse(context, 403, "Putback answers only to this machine's own name.");
        } else if (!METHODS.contains(context.req().getMethod())) {
            context.header("Allow", "GET, HEAD, POST");
            refuse(context, 405, "Pages are read and forms are sent; nothing else is done here.");
        } else if (isForged(context)) {
            refuse(context, 403, "This was sent from a page of another site; nothing was done.");
        } else if (context.req().getContentLengthLong() > LONGEST_FORM && !context.isMultipartFormData()) {
            drop(context);
            refuse(context, 413, "A form of more than 1 MB is not read.");
        }
    }

    /** Lets what is too long run out unread, up to a limit: who is still sending would never see the answer. */
    private static void drop(Context context) {
        byte[] some = new byte[65_536];
        long dropped = 0;
        try {
            InputStream sent = context.req().getInputStream();
            for (int read = sent.read(some); read >= 0 && dropped < MOST_DROPPED; read = sent.read(some)) {
                dropped += read;
            }
        } catch (IOException gone) {
            // nobody is there to be answered
        }
    }

    private static void refuse(Context context, int status, String said) {
        context.attribute(Replies.TOLD, true);
        context.status(status).result(said).skipRemainingHandlers();
    }

    /** Without the port; a page of another site that has its name point here is not this machine. */
    private static String name(@Nullable String host) {
        if (host == null) {
            return "";
        }
        int end = host.startsWith("[") ? host.indexOf(']') + 1 : host.indexOf(':');
        return end <= 0 ? host : host.substring(0, end);
    }

    /** A browser says where a form was sent from; what comes from another site's page is not what a person here meant. */
    private static boolean isForged(Context context) {
        String method = context.req().getMethod();
        if (method.equals("GET") || method.equals("HEAD")) {
            return false;
        }
        String origin = context.header("Origin");
        String site = context.header("Sec-Fetch-Site");
        boolean otherOrigin = origin != null && !origin.equals(context.scheme() + "://" + context.host());
        return otherOrigin || (site != null && !site.equals("same-origin") && !site.equals("none"));
    }
}
