package putback.app.papers;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.AngleJob;
import putback.plan.Plan;
import putback.plan.tools.Tray;

/** All papers, each as the bytes of a PDF file. The same input gives the same bytes. */
public final class Papers {
    private Papers() {}

    /** The whole plan for the trolley: ladder, steps with cautions, tightening table, tools, parts, follow-ups. */
    public static byte[] jobCard(Plan plan, JobHead head, HouseStyle style) {
        return jobCard(plan, null, head, style);
    }

    /**
     * The same with the wrench for each tightening.
     *
     * @param tray what the garage's toolbox has for it; null where no toolbox is known
     */
    public static byte[] jobCard(Plan plan, @Nullable Tray tray, JobHead head, HouseStyle style) {
        return Printing.pdf(JobCard.of(plan, tray, head, style));
    }

    /** What a customer says yes to: lines, tax, three figures, ceiling, what may change the price, terms, approval. */
    public static byte[] estimate(Quote quote, GarageTerms law, JobHead head, HouseStyle style) {
        return Printing.pdf(EstimatePaper.of(quote, law, head, style));
    }

    /** Labels for bags of fasteners, in the order of removal: 24 on A4, 30 on Letter, one by one from a roll. */
    public static byte[] labels(Plan plan, JobHead head, PaperSize paper) {
        LabelSheet sheet = LabelSheet.of(plan, head, LabelLayout.on(paper));
        return Printing.pdf(Printing.html("papers/labels.jte", "sheet", sheet), head.on());
    }

    /**
     * What was asked for and what was read.
     *
     * @param readings by joint; what nobody has read is left to a pen, and a joint's last one counts
     */
    public static byte[] tighteningRecord(Plan plan, List<Reading> readings, JobHead head, HouseStyle style) {
        return Printing.pdf(TighteningRecord.of(plan, readings, head, style));
    }

    /** Sizes, torques and sources of the joints that a plan opens, to be written down at the car. */
    public static byte[] fillInCard(Plan plan, JobHead head, HouseStyle style) {
        return Printing.pdf(FillInCard.of(plan, head, style));
    }

    /** What to turn, the readings before and after, what is wanted, and the car drawn. */
    public static byte[] angles(AngleJob job, JobHead head, HouseStyle style) {
        return Printing.pdf(AnglesPaper.of(job, head, style));
    }

    /** What was done, invoice, found and declined, cautions for the owner, and the card for the recheck. */
    public static byte[] handover(Handover handover, JobHead head, HouseStyle style) {
        return Printing.pdf(HandoverPaper.of(handover, head, style));
    }
}
