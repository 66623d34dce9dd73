package putback.app.web.door;

import io.javalin.http.Context;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import putback.app.access.Passwords;
import putback.app.access.Tries;
import putback.app.web.frame.Cookies;
import putback.app.web.frame.Form;
import putback.app.web.frame.Visitor;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.Device;
import putback.store.books.Devices;
import putback.store.books.People;
import putback.store.books.Person;
import putback.store.books.Sessions;

/** Checks names and passwords, and starts sessions. */
public final class SigningIn {
    public static final String DEVICE = "__Host-putback-device";
    private static final Duration HOLDS = Duration.ofHours(12);
    private static final Duration HOLDS_ON_DEVICE = Duration.ofDays(30);
    /** The longest that browsers keep a cookie. */
    private static final Duration DEVICE_IS_KNOWN = Duration.ofDays(400);

    private final Books books;
    private final Tries tries;

    SigningIn(Books books) {
        this.books = books;
        tries = new Tries(books.clock());
    }

    /** What came of a try. */
    record Tried(@Nullable Person person, int status, String said) {}

    /** Looks at the name and password of a form. An unknown name, a wrong password and one who has left are answered alike. */
    Tried tried(Context context) {
        String name = Visitor.named(Form.of(context).text("name"));
        String password = context.formParam("password");
        String address = context.ip();
        if (!tries.take(name, address)) {
            context.header("Retry-After", "60");
            return new Tried(null, 429, "Too many tries. Wait a minute, then try again.");
        }
        Person person = new People(books).named(name).filter(Person::active).orElse(null);
        boolean fits = Passwords.fits(person == null ? "" : person.password(), password == null ? "" : password);
        if (!fits || person == null) {
            return new Tried(null, 401, "This name and this password do not belong together.");
        }
        tries.giveBack(name, address);
        return new Tried(person, 200, "");
    }

    /** Signs one in; whatever session the browser had is ended, so that nobody can have known its token before. */
    void begin(Context context, Person person) {
        String secret = context.cookie(DEVICE);
        Device device = secret == null ? null : new Devices(books).known(secret).orElse(null);
        begin(context, person, device == null ? "" : device.id());
    }

    /** Pairs a device and signs one in there; false when the code does not hold. */
    boolean pair(Context context, Person person, String code, String name) {
        Devices.Paired paired = books.write(change -> {
            Devices.Paired made = new Devices(books).pair(change, code, name, person.id());
            if (made != null) {
                new Audit(books).add(change, person.name(), "", "device paired", name);
            }
            return made;
        });
        if (paired == null) {
            return false;
        }
        Cookies.set(context, DEVICE, paired.secret(), DEVICE_IS_KNOWN.toSeconds(), true);
        begin(context, person, paired.id());
        return true;
    }

    private void begin(Context context, Person person, String device) {
        Duration holds = device.isEmpty() ? HOLDS : HOLDS_ON_DEVICE;
        String before = context.cookie(Gate.SESSION);
        String token = books.write(change -> {
            if (before != null) {
                new Sessions(books).end(change, before);
            }
            return new Sessions(books).start(change, person.id(), device, holds);
        });
        Cookies.set(context, Gate.SESSION, token, holds.toSeconds(), true);
    }

    void end(Context context) {
        String token = context.cookie(Gate.SESSION);
        if (token != null) {
            books.write(change -> {
                new Sessions(books).end(change, token);
                return token;
            });
        }
        Cookies.set(context, Gate.SESSION, "", 0, true);
    }
}
