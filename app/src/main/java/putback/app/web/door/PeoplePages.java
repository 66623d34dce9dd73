package putback.app.web.door;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.app.access.Passwords;
import putback.app.web.frame.Form;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Visitor;
import putback.store.books.Audit;
import putback.store.books.Books;
import putback.store.books.People;
import putback.store.books.Person;

/** Who may sign in, and who did what: the owner's. */
public final class PeoplePages implements PageGroup {
    private final Replies replies;
    private final Books books;

    public PeoplePages(Replies replies, Books books) {
        this.replies = replies;
        this.books = books;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/people", context -> show(context, ""));
        routes.post("/people", this::add);
        routes.post("/people/{id}/password", this::password);
        routes.post("/people/{id}/leave", this::leave);
    }

    private void show(Context context, String said) {
        replies.show(context, "people.jte", new PeopleView(new People(books).all(), said));
    }

    private void refuse(Context context, String said) {
        context.status(422);
        show(context, said);
    }

    private void add(Context context) {
        Form form = Form.of(context);
        String name = Visitor.named(form.text("name"));
        String role = form.oneOf("role", Set.of(Person.OWNER, Person.MECHANIC), Person.MECHANIC);
        String password = typed(context);
        String fault = name.isEmpty() ? "A person needs a name." : Passwords.fault(password);
        if (!fault.isEmpty()) {
            refuse(context, fault);
        } else if (new People(books).named(name).isPresent()) {
            refuse(context, "There is somebody called " + name + " already. Maybe add a letter of the family name.");
        } else {
            String hash = Passwords.hash(password);
            books.write(change -> {
                new People(books).add(change, name, role, hash);
                new Audit(books).add(change, form.who(), "", "person added", name + ", " + role);
                return name;
            });
            context.redirect("/people", HttpStatus.SEE_OTHER);
        }
    }

    private void password(Context context) {
        Person person = person(context);
        if (person == null) {
            return;
        }
        String fault = Passwords.fault(typed(context));
        if (!fault.isEmpty()) {
            refuse(context, fault);
            return;
        }
        String hash = Passwords.hash(typed(context));
        Form form = Form.of(context);
        books.write(change -> {
            new People(books).password(change, person.id(), hash);
            new Audit(books).add(change, form.who(), "", "password set", person.name());
            return person;
        });
        context.redirect("/people", HttpStatus.SEE_OTHER);
    }

    private void leave(Context context) {
        Person person = person(context);
        if (person == null) {
            return;
        }
        if (isLastOwner(person)) {
            refuse(context, person.name() + " is the last owner: nobody could change anything here then.");
            return;
        }
        Form form = Form.of(context);
        books.write(change -> {
            new People(books).leave(change, person.id());
            new Audit(books).add(change, form.who(), "", "person left", person.name());
            return person;
        });
        context.redirect("/people", HttpStatus.SEE_OTHER);
    }

    private boolean isLastOwner(Person person) {
        List<Person> others = new People(books).all();
        return others.stream()
                .noneMatch(other ->
                        other.active() && other.isOwner() && !other.id().equals(person.id()));
    }

    private static String typed(Context context) {
        String password = context.formParam("password");
        return password == null ? "" : password;
    }

    private @Nullable Person person(Context context) {
        String id = context.pathParam("id");
        Person person = new People(books).find(id).orElse(null);
        if (person == null) {
            replies.missing(context, "person", id);
        }
        return person;
    }
}
