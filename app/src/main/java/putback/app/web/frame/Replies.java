package putback.app.web.frame;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import putback.quantity.Shown;

/** What every group of pages does with a request. */
public final class Replies {
    public static final String TOLD = "told";

    private final Pages pages;

    public Replies(Pages pages) {
        this.pages = pages;
    }

    /** The templates. */
    public Pages pages() {
        return pages;
    }

    /** The first value of each name in the address. */
    public static Map<String, String> typed(Context context) {
        return first(context.queryParamMap());
    }

    /** The first value of each name in the form that was sent. */
    public static Map<String, String> sent(Context context) {
        return first(context.formParamMap());
    }

    private static Map<String, String> first(Map<String, List<String>> all) {
        Map<String, String> values = new HashMap<>();
        for (Map.Entry<String, List<String>> value : all.entrySet()) {
            if (!value.getValue().isEmpty()) {
                values.put(value.getKey(), value.getValue().get(0));
            }
        }
        return values;
    }

    /** Whether the script asks, for what stands below a form only. */
    public static boolean isPart(Context context) {
        return context.path().endsWith("-part");
    }

    /** Where the layout leaves room for who is working; no text that a person writes can look like it. */
    public static final String ROOM_FOR_WHO = "<who></who>";

    /** Sends a page, with who is working at its top. */
    public void page(Context context, String html) {
        String who = html.contains(ROOM_FOR_WHO) ? pages.who(Visitor.of(context)) : "";
        context.contentType("text/html; charset=utf-8").result(html.replace(ROOM_FOR_WHO, who));
    }

    /** Sends why not, with its status. */
    public void refuse(Context context, Answer.Refused refused) {
        context.status(refused.status());
        context.attribute(TOLD, true);
        page(
                context,
                isPart(context)
                        ? pages.refused(refused.heading(), refused.lines())
                        : pages.message(refused.heading(), refused.lines()));
    }

    /** Nothing is at this address, because there is no such thing. */
    public void missing(Context context, String thing, String name) {
        String said = "There is no " + thing + " called " + Shown.text(name) + ".";
        refuse(context, new Answer.Refused(404, "No such " + thing, List.of(said)));
    }

    /** Fills a template whose one parameter is called {@code view}. */
    public void show(Context context, String template, Object view) {
        page(context, pages.fill(template, Map.of("view", view)));
    }

    /** Somebody else saved it meanwhile: nothing is overwritten, and what was typed is still there to be read. */
    public void overtaken(Context context, String back, Form form) {
        List<String> lines = new ArrayList<>();
        lines.add("Somebody else saved this while you were writing; nothing was overwritten.");
        lines.add("What you typed:");
        form.values().forEach((name, value) -> {
            if (!value.isEmpty() && !name.endsWith("version") && !name.endsWith("id")) {
                lines.add(name + ": " + value);
            }
        });
        context.status(409);
        context.attribute(TOLD, true);
        page(context, pages.fill("overtaken.jte", Map.of("view", lines, "back", back)));
    }
}
