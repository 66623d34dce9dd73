package putback.app.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.access.Passwords;
import putback.quantity.Shown;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.People;
import putback.store.books.Person;
import putback.store.database.Database;
import putback.store.database.StoreFailure;

/** Names the people who may sign in when the pages are served to the garage's network. */
final class PersonCommand implements Command {
    private static final Option ROLE = Option.value("--role", "ROLE", "owner or mechanic; else mechanic");
    private static final int LONGEST_NAME = 60;

    private final InputStream in;

    PersonCommand(InputStream in) {
        this.in = in;
    }

    @Override
    public Usage usage() {
        return new Usage(
                "person",
                "Adds somebody who may sign in, sets a password, or lists who may.",
                List.of("add|password|list", "[NAME]"),
                List.of(ROLE, BooksPlace.DATA, BooksPlace.DATABASE, BooksPlace.GARAGE));
    }

    @Override
    public String more() {
        return """
                The password is asked for on the terminal, or read as one line from standard input. It needs 8 characters.
                putback serve --lan wants an owner; the owner adds the others on the page People.
                password NAME helps an owner who has forgotten theirs; it ends whatever session they have.
                """;
    }

    @Override
    public int run(Arguments arguments, Terminal terminal) throws UsageFault {
        String what = arguments.operands().get(0);
        String name =
                arguments.operands().size() > 1 ? arguments.operands().get(1).strip() : "";
        String role = arguments.value(ROLE.name()).orElse(Person.MECHANIC);
        if (!List.of("add", "password", "list").contains(what)) {
            throw Renewing.fault("person", "\"" + what + "\" is not add, password or list");
        }
        if (!role.equals(Person.OWNER) && !role.equals(Person.MECHANIC)) {
            throw Renewing.fault("person", "--role is owner or mechanic, not \"" + role + "\"");
        }
        if (!what.equals("list")
                && (name.isEmpty()
                        || name.length() > LONGEST_NAME
                        || !Shown.lines(name).equals(name))) {
            throw Renewing.fault("person", "a name has 1 to " + LONGEST_NAME + " letters in one line");
        }
        BooksPlace place = BooksPlace.of("person", arguments);
        try (Database database = place.open()) {
            Books books = place.books(database, Clock.systemUTC());
            return what.equals("list") ? list(books, terminal) : set(books, what, name, role, terminal);
        } catch (StoreFailure failure) {
            return BooksPlace.failed(failure, terminal);
        }
    }

    private static int list(Books books, Terminal terminal) {
        for (Person person : new People(books).all()) {
            terminal.out()
                    .println(Shown.text(person.name()) + "  " + person.role()
                            + (person.active() ? "" : "  no longer signs in"));
        }
        return Exit.DONE;
    }

    private int set(Books books, String what, String name, String role, Terminal terminal) {
        Person person = new People(books).named(name).orElse(null);
        boolean adds = what.equals("add");
        if (adds == (person != null)) {
            terminal.say("putback: " + (adds ? "there is somebody called " : "there is nobody called ") + name
                    + (adds ? " already. Maybe putback person password " + name : ". Maybe putback person list"));
            return Exit.BAD_INPUT;
        }
        String password = asked(name, terminal);
        String fault = password == null ? "No password was given." : Passwords.fault(password);
        if (!fault.isEmpty() || password == null) {
            terminal.say("putback: " + fault);
            return Exit.BAD_INPUT;
        }
        String hash = Passwords.hash(password);
        books.write(change -> {
            if (person == null) {
                new People(books).add(change, name, role, hash);
            } else {
                new People(books).password(change, person.id(), hash);
            }
            new Audit(books).add(change, "putback person", "", adds ? "person added" : "password set", name);
            return name;
        });
        terminal.out().println(name + (person == null ? " may sign in as " + role + "." : " has a new password."));
        return Exit.DONE;
    }

    /** From JDK 22 on there is a console without a terminal too; it reads the same line of standard input. */
    @SuppressWarnings("SystemConsoleNull")
    private @Nullable String asked(String name, Terminal terminal) {
        Console console = System.console();
        if (console != null) {
            char[] typed = console.readPassword("Password for %s: ", name);
            return typed == null ? null : new String(typed);
        }
        try {
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).readLine();
        } catch (IOException unreadable) {
            terminal.say("putback: standard input cannot be read: " + FileFault.said(unreadable));
            return null;
        }
    }
}
