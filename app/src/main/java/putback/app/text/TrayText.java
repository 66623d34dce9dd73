package putback.app.text;

import putback.tightening.toolbox.Have;

/** Whether a tool is there, in words. */
public final class TrayText {
    private TrayText() {}

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
