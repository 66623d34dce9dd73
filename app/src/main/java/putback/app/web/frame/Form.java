package putback.app.web.frame;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a form sent: each value once, without blanks around it, and not longer than anything a person types. */
public final class Form {
    private static final int LONGEST = 4000;

    private final Map<String, String> values = new HashMap<>();
    private final Map<String, List<String>> every = new HashMap<>();
    private final Visitor visitor;
    private String fault = "";

    private Form(Visitor visitor) {
        this.visitor = visitor;
    }

    /** What this request sent. */
    public static Form of(Context context) {
        Form form = new Form(Visitor.of(context));
        form.every.putAll(context.formParamMap());
        Replies.sent(context).forEach((name, value) -> {
            String text = value.strip().replace("\r\n", "\n");
            if (text.length() > LONGEST) {
                form.fault = "What was typed under " + name + " has " + text.length() + " characters; at most "
                        + LONGEST + " are kept. Shorten it.";
            }
            form.values.put(name, clean(text));
        });
        return form;
    }

    /** Letters that steer a terminal or hide in a line have no place in what people write. */
    private static String clean(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints()
                .filter(c -> c == '\n' || putback.quantity.Shown.isHarmless(c))
                .forEach(out::appendCodePoint);
        return out.toString();
    }

    /** Why it cannot be kept; empty when it can. */
    public String fault() {
        return fault;
    }

    /** Everything that was typed, by name. */
    public Map<String, String> values() {
        return values;
    }

    /** Empty where nothing was given. */
    public String text(String name) {
        String value = values.get(name);
        return value == null ? "" : value;
    }

    /** Every value of a name that may be ticked more than once, with commas between. */
    public String all(String name) {
        List<String> values = every.get(name);
        return values == null ? "" : clean(String.join(",", values)).strip();
    }

    /** 0 where it is none. */
    public int number(String name) {
        String text = text(name);
        return text.matches("\\d{1,9}") ? Integer.parseInt(text) : 0;
    }

    /** A choice; what is none of the words counts as not chosen. */
    public String oneOf(String name, Set<String> words, String otherwise) {
        return words.contains(text(name)) ? text(name) : otherwise;
    }

    /** Who does it: who is signed in; where nobody has to, who is named in the form or said to be working here. */
    public String who() {
        if (visitor.isSignedIn()) {
            return visitor.name();
        }
        String by = text("by").isEmpty() ? visitor.name() : text("by");
        return by.isEmpty() ? "somebody" : by;
    }
}
