package putback.app.text;

import java.util.List;
import putback.plan.tools.Tray;
import putback.tightening.toolbox.Have;

/** Whether a tool is there, in words. */
public final class TrayText {
    private TrayText() {}

    /** What to get before the car is stripped. */
    public static String summary(Tray tray) {
        List<String> missing = tray.missing();
        return missing.isEmpty()
                ? "All tools and aids are there, or something that will do."
                : "Missing from the toolbox: " + String.join(", ", missing) + ". Get "
                        + (missing.size() == 1 ? "it" : "them") + " before the car is stripped.";
    }

    /** After the tool and its steps: nothing where it is there and nothing is to be said of it. */
    public static String have(Have have) {
        String remark = have.remark().isEmpty() ? "" : ": " + have.remark();
        return switch (have.state()) {
            case THERE -> have.remark().isEmpty() ? "" : "; " + have.remark();
            case INSTEAD -> "; not there, but " + have.remark();
            case MISSING -> "; MISSING" + remark;
        };
    }
}
