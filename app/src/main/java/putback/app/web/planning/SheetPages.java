package putback.app.web.planning;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import putback.app.json.PlanJson;
import putback.app.ladder.LadderSize;
import putback.app.ladder.LadderSvg;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Garage;
import putback.app.web.frame.PageGroup;
import putback.app.web.frame.Pages;
import putback.app.web.frame.Question;
import putback.app.web.frame.Replies;
import putback.app.web.frame.Shelf;
import putback.plan.Plan;
import putback.store.sheets.Read;

/** Sheets, their plans and prices, and tightness: questions that leave nothing behind. */
public final class SheetPages implements PageGroup {
    private final Replies replies;
    private final Pages pages;
    private final Garage garage;
    private final Shelf shelf;
    private final Pricing pricing;
    private final Remembered remembered = new Remembered();

    public SheetPages(Replies replies, Garage garage, Shelf shelf, Pricing pricing) {
        this.replies = replies;
        pages = replies.pages();
        this.garage = garage;
        this.shelf = shelf;
        this.pricing = pricing;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get(
                "/sheets", context -> replies.page(context, pages.fill("sheets.jte", "sheets", SheetView.all(shelf))));
        routes.get("/sheet/{id}", this::sheet);
        routes.get("/plan", this::plan);
        routes.get("/plan-part", this::plan);
        routes.get("/plan.svg", context -> file(context, "image/svg+xml"));
        routes.get("/plan.json", context -> file(context, "application/json"));
        routes.get("/tightening", this::tightening);
        routes.get("/tightening-part", this::tightening);
        routes.get("/price", this::price);
        routes.get("/price-part", this::price);
    }

    /** Refuses what is given more often than it can mean anything. */
    private boolean isDoubled(Context context) {
        for (String name : List.of("sheet", "side")) {
            if (context.queryParams(name).size() > 1) {
                String said = "The address gives " + name + " more than once; give it once.";
                replies.refuse(context, new Answer.Refused(400, "Not understood", List.of(said)));
                return true;
            }
        }
        return false;
    }

    private void sheet(Context context) {
        if (isDoubled(context)) {
            return;
        }
        String id = context.pathParam("id");
        Question chosen = Question.of(id, context.queryParams("renew"), context.queryParam("side"));
        if (shelf.read(id) instanceof Read.Sheet sheet) {
            replies.page(context, pages.fill("sheet.jte", "sheet", SheetView.of(chosen, sheet.assembly())));
        } else {
            replies.missing(context, "sheet", id);
        }
    }

    private void plan(Context context) {
        if (isDoubled(context)) {
            return;
        }
        Question question = question(context);
        Answer answer = Answer.to(question, shelf);
        if (answer instanceof Answer.Refused refused) {
            replies.refuse(context, refused);
        } else {
            Plan plan = ((Answer.Planned) answer).plan();
            PlanView view = PlanView.of(question, plan, garage.tray(plan));
            replies.page(context, pages.fill(Replies.isPart(context) ? "part.jte" : "plan.jte", "plan", view));
        }
    }

    private void tightening(Context context) {
        TighteningView view = TighteningView.of(Replies.typed(context), garage);
        replies.show(context, Replies.isPart(context) ? "tight.jte" : "tightening.jte", view);
    }

    private void price(Context context) {
        if (isDoubled(context)) {
            return;
        }
        Question question = question(context);
        Answer answer = Answer.to(question, shelf);
        if (answer instanceof Answer.Refused refused) {
            replies.refuse(context, refused);
        } else {
            Map<String, String> typed = Replies.typed(context);
            String job = typed.getOrDefault("job", "");
            Plan plan = pricing.priced(((Answer.Planned) answer).plan(), job);
            PriceView view = PriceView.of(question, plan, shelf.seen(question.sheet()), typed, remembered);
            if (view.answer() == null && !Replies.isPart(context)) {
                context.status(422);
            }
            replies.show(context, Replies.isPart(context) ? "priced.jte" : "price.jte", view);
        }
    }

    private void file(Context context, String type) {
        if (isDoubled(context)) {
            return;
        }
        Answer answer = Answer.to(question(context), shelf);
        if (answer instanceof Answer.Planned planned) {
            boolean svg = type.startsWith("image");
            context.contentType(type + "; charset=utf-8");
            context.result(
                    svg
                            ? LadderSvg.draw(planned.plan(), LadderSize.PAPER)
                            : PlanJson.of(planned.plan(), garage.tray(planned.plan())));
        } else {
            replies.refuse(context, (Answer.Refused) answer);
        }
    }

    private static Question question(Context context) {
        return Question.of(context.queryParam("sheet"), context.queryParams("renew"), context.queryParam("side"));
    }
}
