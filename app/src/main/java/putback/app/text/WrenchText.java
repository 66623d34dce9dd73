package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.tools.Limits;
import putback.tightening.toolbox.Tightened;

/** What is said beside a torque: what a reading may be, with which wrench, set to what. */
public final class WrenchText {
    private WrenchText() {}

    /**
     * One line for each thing to know.
     *
     * @param tightened null where no toolbox is known
     */
    public static List<String> lines(Limits limits, @Nullable Tightened tightened) {
        if (tightened instanceof Tightened.With with) {
            return with(with);
        }
        List<String> lines = new ArrayList<>();
        lines.add("at the fastener: " + limits.text() + (limits.stated() ? "" : ", a tenth to either side"));
        if (tightened instanceof Tightened.Untorqued untorqued) {
            lines.add("no wrench here: " + untorqued.because());
            lines.add("borrow one, or write it down as tightened, not torqued, and why");
        }
        return lines;
    }

    private static List<String> with(Tightened.With with) {
        List<String> lines = new ArrayList<>();
        lines.add(with.wrench().text() + ": set " + with.setting().text() + "; a reading may be "
                + with.window().text());
        for (String reason : with.due()) {
            lines.add(with.wrench().id() + " is due for calibration: " + reason);
        }
        lines.addAll(with.remarks());
        return lines;
    }
}
