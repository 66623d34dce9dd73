package putback.app.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;

/** Fills the templates. */
final class Pages {
    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);

    String sheets(List<SheetView> sheets) {
        return fill("sheets.jte", Map.of("sheets", sheets));
    }

    String sheet(SheetView sheet) {
        return fill("sheet.jte", Map.of("sheet", sheet));
    }

    String plan(PlanView plan) {
        return fill("plan.jte", Map.of("plan", plan));
    }

    /** The plan alone, to stand below the form. */
    String part(PlanView plan) {
        return fill("part.jte", Map.of("plan", plan));
    }

    /** Why there is none, in the same place. */
    String refused(String heading, List<String> lines) {
        return fill("refused.jte", Map.of("heading", heading, "lines", lines));
    }

    String tightening(TighteningView view) {
        return fill("tightening.jte", Map.of("view", view));
    }

    /** The answer alone, to stand below the form. */
    String tighteningPart(TighteningView view) {
        return fill("tight.jte", Map.of("view", view));
    }

    String price(PriceView view) {
        return fill("price.jte", Map.of("view", view));
    }

    /** The figures alone, to stand below the terms. */
    String pricePart(PriceView view) {
        return fill("priced.jte", Map.of("view", view));
    }

    String angles(WheelsView view, boolean part) {
        return fill(part ? "anglesPart.jte" : "angles.jte", Map.of("view", view));
    }

    String corner(CornerView view, boolean part) {
        return fill(part ? "cornerPart.jte" : "corner.jte", Map.of("view", view));
    }

    /** The shell of the page at the car; its script fills it, so that it works without a network. */
    String carside(String job, String number) {
        return fill("carside.jte", Map.of("job", job, "number", number));
    }

    /** Who is working, for the top of a page. */
    String who(Visitor visitor) {
        return fill("who.jte", Map.of("view", visitor));
    }

    String message(String heading, List<String> lines) {
        return fill("message.jte", Map.of("heading", heading, "lines", lines));
    }

    String fill(String template, Map<String, Object> values) {
        StringOutput page = new StringOutput();
        templates.render(template, values, page);
        return page.toString();
    }
}
