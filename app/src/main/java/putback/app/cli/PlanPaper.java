package putback.app.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.papers.HouseStyle;
import putback.app.papers.JobHead;
import putback.app.papers.Papers;
import putback.plan.Plan;
import putback.plan.tools.Tray;

/** Writes one of the papers that a plan alone can fill. */
final class PlanPaper {
    private PlanPaper() {}

    static int write(
            String command, String kind, Plan plan, @Nullable Tray tray, Arguments arguments, Terminal terminal)
            throws UsageFault {
        HouseStyle style = PaperOptions.style(command, arguments);
        JobHead head = PaperOptions.head(command, arguments);
        byte[] pdf =
                switch (kind) {
                    case "labels" -> Papers.labels(plan, head, style.paper());
                    case "fill-in" -> Papers.fillInCard(plan, head, style);
                    case "tightening-record" -> Papers.tighteningRecord(plan, List.of(), head, style);
                    default -> Papers.jobCard(plan, tray, head, style);
                };
        return PdfFile.write(pdf, arguments.value("--pdf").orElse(""), terminal);
    }
}
