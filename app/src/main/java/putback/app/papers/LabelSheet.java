package putback.app.papers;

import java.util.ArrayList;
import java.util.List;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.sheet.Fastener;
import putback.sheet.Joint;
import putback.sheet.JointKind;

/**
 * Labels for the bags of what is undone, in the order in which it comes off.
 *
 * @param pages at least one
 */
public record LabelSheet(String title, LabelLayout layout, List<List<Label>> pages) {
    public LabelSheet {
        pages = List.copyOf(pages);
    }

    static LabelSheet of(Plan plan, JobHead head, LabelLayout layout) {
        List<List<Label>> pages = new ArrayList<>();
        List<Label> page = new ArrayList<>();
        int bag = 0;
        for (Step step : plan.steps()) {
            Joint joint = step.joint();
            if (step.act() == Act.UNDO
                    && joint != null
                    && comesOff(joint.entry().kind())) {
                if (page.size() == layout.perPage()) {
                    pages.add(List.copyOf(page));
                    page.clear();
                }
                bag++;
                page.add(label(joint, bag, page.size(), head.number()));
            }
        }
        pages.add(List.copyOf(page));
        return new LabelSheet("Bag labels: " + JobCard.title(plan, head), layout, pages);
    }

    /** Whether something is left in the hand that goes into a bag. */
    private static boolean comesOff(JointKind kind) {
        return switch (kind) {
            case BOLT_NUT, BOLT, NUT, SCREW, CLIP, PIN, TAPER, CIRCLIP -> true;
            case PLUG, PRESS, UNION, HOOK, SEAT -> false;
        };
    }

    private static Label label(Joint joint, int bag, int place, String job) {
        Fastener fastener = joint.fastener();
        String size = FastenerWords.size(fastener);
        String text = (job.isEmpty() ? "" : "JOB " + job + " ") + "BAG " + bag + " " + joint.id();
        return new Label(
                place,
                "Bag " + bag,
                joint.side().word(),
                FastenerWords.name(joint),
                fastener.count() + " x "
                        + (size.isEmpty() ? joint.entry().kind().word() : size),
                fastener.singleUse(),
                job,
                QrCode.svg(text));
    }
}
