package putback.app.web.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.ladder.Figures;
import putback.app.text.Whereabouts;
import putback.app.text.WrenchText;
import putback.plan.Plan;
import putback.plan.Reasons;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.plan.tools.Limits;
import putback.plan.tools.Tray;
import putback.quantity.Minutes;
import putback.sheet.Fastener;
import putback.sheet.Joint;

/** Puts the steps of a plan into words for the page. */
public final class StepViews {
    private final Plan plan;
    private final @Nullable Tray tray;
    private final Reasons reasons;
    private final Map<String, Joint> joints = new HashMap<>();

    public StepViews(Plan plan, @Nullable Tray tray) {
        this.plan = plan;
        this.tray = tray;
        this.reasons = Reasons.of(plan);
        for (Joint joint : plan.assembly().joints()) {
            joints.put(joint.id(), joint);
        }
    }

    /** The steps of a phase, in their order. */
    public List<StepView> of(Phase phase) {
        List<StepView> views = new ArrayList<>();
        String here = "";
        for (int at = 0; at < plan.steps().size(); at++) {
            Step step = plan.steps().get(at);
            if (step.phase() == phase) {
                String place = Whereabouts.of(plan.steps(), at).text();
                boolean goes = !place.isEmpty() && !place.equals(here);
                views.add(view(step, goes ? place : ""));
                here = goes ? place : here;
            }
        }
        return views;
    }

    private StepView view(Step step, String place) {
        Fastener fastener = step.act() == Act.TIGHTEN ? step.fastener() : null;
        return new StepView(
                step.number(),
                step.act() == Act.HEIGHT,
                place,
                mark(step),
                step.text(),
                minutes(step),
                tools(step),
                fastener == null ? "" : torque(fastener),
                fastener == null ? "" : source(fastener),
                step.stages(),
                wrench(step),
                step.cautions(),
                why(step));
    }

    private List<String> wrench(Step step) {
        Limits limits = Limits.of(step);
        return limits == null
                ? List.of()
                : WrenchText.lines(limits, tray == null ? null : tray.wrenches().get(step.number()));
    }

    private static String mark(Step step) {
        Joint joint = step.joint();
        return switch (step.act()) {
            case UNDO -> "open";
            case BREAK_LOOSE -> "loose";
            case RUN_DOWN -> "started";
            case TIGHTEN -> "tight";
            case START -> joint != null && !joint.entry().kind().threaded() ? "tight" : "started";
            default -> "none";
        };
    }

    private static String minutes(Step step) {
        Minutes sum = step.minutes().plus(step.setup());
        return sum.isZero() ? "" : Figures.minutes(sum);
    }

    private static String tools(Step step) {
        String tool = step.tool().equals("hand") ? "by hand" : step.tool();
        if (step.hold().isEmpty()) {
            return tool;
        }
        String hold = "other side held with " + step.hold();
        return tool.isEmpty() ? hold : tool + "; " + hold;
    }

    private static String torque(Fastener fastener) {
        if (Figures.unknown(fastener)) {
            return "torque not known";
        }
        String second = Figures.secondUnit(fastener);
        String first = Figures.firstUnit(fastener);
        return second.isEmpty() ? first : first + " (" + second + ")";
    }

    private static String source(Fastener fastener) {
        String source = fastener.source();
        if (Figures.unsourced(fastener)) {
            return "nobody says where this figure came from";
        }
        return source == null || Figures.unknown(fastener) ? "" : source;
    }

    private List<String> why(Step step) {
        Joint joint = cause(step);
        return joint == null ? List.of() : reasons.sentences(joint);
    }

    /** The joint that a step works on, or else the nearest one on the way back to what is renewed. */
    private @Nullable Joint cause(Step step) {
        if (step.joint() != null) {
            return step.joint();
        }
        for (String id : step.why()) {
            Joint joint = joints.get(id);
            if (joint != null) {
                return joint;
            }
        }
        return null;
    }
}
