package putback.plan.steps;

import java.util.List;
import putback.sheet.Fastener;
import putback.sheet.Joint;
import putback.sheet.Part;

/** How each kind of fixing is opened and closed, in words. */
final class UndoText {
    private UndoText() {}

    static String of(Joint joint) {
        String name = Words.of(joint);
        return switch (joint.entry().kind()) {
            case BOLT_NUT, BOLT, NUT, SCREW, UNION -> "Undo " + name + details(joint.fastener()) + ".";
            case TAPER ->
                "Slacken the nut of " + name + ", break the taper with the nut still on, then take the nut off.";
            case CLIP -> "Unclip " + name + ".";
            case PLUG -> "Unplug " + name + ".";
            case PIN -> "Draw the pin of " + name + ".";
            case PRESS -> "Press " + name + " apart.";
            case CIRCLIP -> "Take out the circlip of " + name + ".";
            case HOOK -> "Unhook " + name + ".";
            case SEAT -> "Lift " + name + " out of the seat.";
        };
    }

    /** Where the old parts go to scrap in one piece. */
    static String scrapped(Joint joint, List<Part> parts) {
        String all = parts.size() == 2 ? "both" : "all of them";
        return "Leave " + Words.of(joint) + " together: " + all
                + " are renewed, so the old ones need not be parted and the time is in hand.";
    }

    /** What is opened on the car, and would not have to be. */
    static String inOnePiece(List<Part> parts) {
        String all = parts.size() == 2 ? "Both" : "All of them";
        return " " + all + " are renewed: if they can come off in one piece, leave this shut, and the time is in hand.";
    }

    private static String details(Fastener fastener) {
        String size = Words.fasteners(fastener);
        String hold = ToolText.hold(fastener);
        return (size.isEmpty() ? "" : ": " + size) + (hold.isEmpty() ? "" : ", hold the other side with " + hold);
    }

    /** By hand where it is threaded, all of it where it is not. */
    static String start(Joint joint, Fastener back) {
        String name = Words.of(joint);
        String fresh = back.singleUse() ? Words.they(back, "a new ", "new ") : "";
        return switch (joint.entry().kind()) {
            case BOLT_NUT, BOLT, NUT, SCREW, UNION, TAPER -> "Start " + name + " by hand" + startDetails(back) + ".";
            case CLIP -> "Clip " + name + " home" + with(fresh, "clip") + ".";
            case PLUG -> "Plug " + name + " in until it clicks.";
            case PIN -> "Fit the pin of " + name + with(fresh, "pin") + ".";
            case PRESS -> "Press " + name + " home.";
            case CIRCLIP -> "Fit the circlip of " + name + with(fresh, "circlip") + " and see it home all round.";
            case HOOK -> "Hook " + name + " in.";
            case SEAT -> "Set " + name + " in the seat.";
        };
    }

    private static String with(String fresh, String word) {
        if (fresh.isEmpty()) {
            return "";
        }
        return ", " + fresh + word + (fresh.equals("new ") ? "s" : "");
    }

    private static String startDetails(Fastener back) {
        if (!back.singleUse()) {
            String size = Words.fasteners(back);
            return size.isEmpty() ? "" : ": " + size;
        }
        String thread = back.thread() == null ? Words.they(back, "one", "ones") : back.thread();
        return ": " + Words.they(back, "a new ", back.count() + " new ") + thread;
    }
}
