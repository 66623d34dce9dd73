package putback.app.web.frame;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.jspecify.annotations.Nullable;
import putback.quantity.Shown;
import putback.store.books.Person;

/**
 * Who asks for a page.
 *
 * @param name as it is written beside what is done; empty when nobody has said
 * @param person null unless signed in
 * @param asks whether the top of a page asks who is working
 */
public record Visitor(String name, @Nullable Person person, boolean asks) {
    /** Nobody is known, and nobody is asked. */
    static final Visitor NOBODY = new Visitor("", null, false);

    public static final String COOKIE = "putback-me";
    private static final int LONGEST = 60;
    private static final String KEY = "visitor";

    /** Who said at this browser that they are working; no proof of anything. */
    public static Visitor said(Context context) {
        String cookie = context.cookie(COOKIE);
        try {
            byte[] name = Base64.getUrlDecoder().decode(cookie == null ? "" : cookie);
            return new Visitor(named(new String(name, StandardCharsets.UTF_8)), null, true);
        } catch (IllegalArgumentException notOurs) {
            return new Visitor("", null, true);
        }
    }

    /** Who is signed in. */
    public static Visitor signedIn(Person person) {
        return new Visitor(person.name(), person, false);
    }

    /** Whose request this is. */
    public static Visitor of(Context context) {
        Visitor visitor = context.attribute(KEY);
        return visitor == null ? NOBODY : visitor;
    }

    /** Keeps who asks for the rest of this request. */
    public void arrives(Context context) {
        context.attribute(KEY, this);
    }

    /** Whether the person has proved who they are. */
    public boolean isSignedIn() {
        return person != null;
    }

    /** Whether the garage's settings, people and devices are theirs to change. */
    public boolean isOwner() {
        return person != null && person.isOwner();
    }

    /** A name as it may stand in a line: one line, harmless letters, not long. */
    public static String named(String typed) {
        StringBuilder name = new StringBuilder();
        typed.strip().codePoints().filter(Shown::isHarmless).limit(LONGEST).forEach(name::appendCodePoint);
        return name.toString().strip();
    }

    /** The name as a cookie can carry it. */
    public static String carried(String name) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(name.getBytes(StandardCharsets.UTF_8));
    }
}
