package putback.app.papers;

import putback.plan.Plan;

/** All papers, each as the bytes of a PDF file. The same input gives the same bytes. */
public final class Papers {
    private Papers() {}

    /** The whole plan for the trolley: ladder, steps with cautions, tightening table, tools, parts, follow-ups. */
    public static byte[] jobCard(Plan plan, JobHead head, HouseStyle style) {
        return Printing.pdf(JobCard.of(plan, head, style));
    }
}
