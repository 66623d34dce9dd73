package putback.app.text;

import java.util.Locale;
import putback.quantity.Force;
import putback.quantity.Torque;
import putback.tightening.Asked;
import putback.tightening.Strength;
import putback.tightening.Tightness;

/** How tight a fastener is, for a person. */
public final class TightnessText {
    private static final int BAR = 40;
    private static final int WIDEST = 78;

    private TightnessText() {}

    /** Figures first, then what belongs beside them, at most 78 columns wide and no wider than the screen. */
    public static String of(Tightness answer, Screen screen) {
        Asked asked = answer.asked();
        Strength strength = asked.grade().strength(asked.thread());
        StringBuilder text = new StringBuilder();
        line(
                text,
                asked.thread().designation(),
                asked.thread().series().words() + ", " + asked.grade().mark());
        line(
                text,
                "stress area",
                String.format(Locale.ROOT, "%.1f mm2", asked.thread().stressAreaMm2()));
        String proof = strength.proofIsYield() ? "load at 0.2 %" : "proof load";
        line(text, proof, answer.proofLoad().text());
        line(text, "clamp load", answer.clamp().text());
        line(text, "", bar(answer.proofUse(), strength.proofIsYield() ? "load at 0.2 %" : "proof load"));
        line(text, "yield used", percent(answer.yieldUse()) + ", pull and twist together");
        line(text, "torque", answer.torque().text());
        Force after = answer.clampAfterAngle();
        if (after != null) {
            line(text, "with the angle", after.text() + " if it stays elastic");
        }
        line(
                text,
                "loosening",
                answer.yieldUse() > 1
                        ? "not reckoned: the bolt yields first"
                        : Torque.spanText(answer.looseningLow(), answer.looseningHigh()));
        text.append('\n');
        for (String note : answer.notes()) {
            wrapped(text, note, Math.min(WIDEST, screen.width()));
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append(String.format(Locale.ROOT, "%-14s %s%n", name, value).replace(System.lineSeparator(), "\n"));
    }

    /** Clamp load against proof load: the bar is full at the proof load. */
    private static String bar(double use, String of) {
        int full = (int) Math.min(BAR, Math.round(use * BAR));
        return "[" + "=".repeat(full) + " ".repeat(BAR - full) + (use > 1 ? ">" : "]") + " " + percent(use) + " of "
                + of;
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    private static void wrapped(StringBuilder text, String note, int width) {
        int column = 0;
        for (String word : ("- " + note).split(" ", -1)) {
            if (column > 0 && column + 1 + word.length() > width) {
                text.append("\n ");
                column = 1;
            }
            text.append(column == 0 ? "" : " ").append(word);
            column += word.length() + (column == 0 ? 0 : 1);
        }
        text.append('\n');
    }
}
