package putback.app.web.frame;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;

/** Fills the templates. */
public final class Pages {
    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);

    /** Why there is no answer, in its place below a form. */
    String refused(String heading, List<String> lines) {
        return fill("refused.jte", Map.of("heading", heading, "lines", lines));
    }

    /** Who is working, for the top of a page. */
    String who(Visitor visitor) {
        return fill("who.jte", Map.of("view", visitor));
    }

    String message(String heading, List<String> lines) {
        return fill("message.jte", Map.of("heading", heading, "lines", lines));
    }

    /** Fills a template that has one parameter. */
    public String fill(String template, String parameter, Object value) {
        return fill(template, Map.of(parameter, value));
    }

    /** Fills a template; values by the names of its parameters. */
    public String fill(String template, Map<String, Object> values) {
        StringOutput page = new StringOutput();
        templates.render(template, values, page);
        return page.toString();
    }
}
