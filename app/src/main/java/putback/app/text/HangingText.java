package putback.app.text;

import org.jspecify.annotations.Nullable;
import putback.angles.linkage.StrutJob;
import putback.angles.linkage.WheelPosition;
import putback.angles.reach.Hanging;
import putback.angles.reach.Reach;

/** What a strut job may shift, and how far the hub may hang, for a person. */
public final class HangingText {
    private HangingText() {}

    /** Empty where neither was asked. */
    public static String of(@Nullable StrutJob job, @Nullable Hanging hanging) {
        StringBuilder text = new StringBuilder();
        if (job != null) {
            strut(text, job);
        }
        if (hanging != null) {
            text.append('\n');
            RowText.wrapped(text, "", "Hanging on its links the hub may drop" + said(hanging.dropping(), " mm"));
            RowText.wrapped(
                    text,
                    "",
                    "With the strut or the upper arm off its top may lean outward about the ball joint"
                            + said(hanging.leaning(), " deg"));
            RowText.wrapped(
                    text,
                    "",
                    "That is by straight lines between the ends, at which a hose is pulled straight: stay well short of"
                            + " it, and tie the hub up.");
        }
        return text.toString();
    }

    private static void strut(StringBuilder text, StrutJob job) {
        double lower = job.lower().millimetres();
        String stands = lower == 0 ? "" : lower > 0 ? "lower" : "higher";
        text.append("\nAfter the job");
        if (lower != 0) {
            text.append(", the body ")
                    .append(AngleFigures.plain(Math.abs(lower), 1))
                    .append(" mm ")
                    .append(stands);
        }
        text.append(", before anything is set:\n");
        row(text, "  now", job.before());
        if (job.play().millimetres() == 0) {
            row(text, lower == 0 ? "  after" : "  " + stands, job.inward());
        } else {
            row(text, "  play, top in", job.inward());
            row(text, "  play, top out", job.outward());
        }
    }

    private static void row(StringBuilder text, String name, WheelPosition wheel) {
        text.append(name).append(" ".repeat(18 - name.length())).append("camber ");
        text.append(AngleFigures.both(wheel.camberDeg())).append(", toe ");
        text.append(AngleFigures.both(wheel.toeDeg())).append('\n');
    }

    private static String said(Reach reach, String unit) {
        if (reach instanceof Reach.Until until) {
            return " " + AngleFigures.plain(Math.floor(until.amount()), 0) + unit + "; then " + until.tie()
                    + " is at its limit.";
        }
        if (reach instanceof Reach.NotKnown unknown) {
            return ": not known, since nobody gave the limit of " + unknown.tie() + ". Tie it up.";
        }
        if (reach instanceof Reach.TightAlready tight) {
            return ": not at all, " + tight.tie() + " is at its limit where it stands; check its points and length.";
        }
        return " as far as the linkage goes, " + AngleFigures.plain(((Reach.Free) reach).amount(), 0) + unit
                + " looked at.";
    }
}
