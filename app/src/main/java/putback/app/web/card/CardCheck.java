package putback.app.web.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.quantity.Parsed;
import putback.quantity.StatedTorque;
import putback.store.sheets.Piece;
import putback.tightening.FrictionSpan;
import putback.tightening.Plausibility;
import putback.tightening.Plausibility.Verdict;
import putback.tightening.PropertyClass;
import putback.tightening.ScrewThread;

/**
 * What can be said at once of a torque that is typed on the card.
 *
 * @param doubtful whether it cannot be right, or cannot be read
 * @param said one line; empty where nothing is typed
 */
public record CardCheck(boolean doubtful, String said) {
    static final CardCheck NOTHING = new CardCheck(false, "");

    /**
     * @param typed torque, thread, class and condition by their names, as typed or as the sheet has them
     */
    static CardCheck of(Map<String, String> typed, CardWords words) {
        String torque = value(typed, "torque");
        Piece said = torque.isEmpty() ? Piece.NOTHING : words.said("torque", torque);
        if (Piece.isNothing(said)) {
            return NOTHING;
        }
        boolean staged = said instanceof Piece.Entries;
        String first = said instanceof Piece.Entries entries
                ? CardWords.typed("", entries.get("torque"))
                : CardWords.typed("", said);
        if (first.equals("snug")) {
            return new CardCheck(false, "snug by hand, no figure");
        }
        if (!(StatedTorque.parse(first) instanceof Parsed.Value<StatedTorque> read)) {
            return new CardCheck(true, StatedTorque.parse(first).refusal() + ".");
        }
        StatedTorque stated = read.value();
        if (stated.torque().newtonMetres() <= 0) {
            return new CardCheck(true, "A torque is more than 0; write ? where it is not known.");
        }
        List<String> lines = new ArrayList<>();
        lines.add(stated.torque().text() + (staged ? ", then an angle" : ""));
        Plausibility judged = judged(typed, stated, staged);
        if (judged == null) {
            lines.add("Give thread and class, and it is judged.");
            return new CardCheck(false, String.join(". ", lines));
        }
        if (judged.verdict() != Verdict.FITS) {
            lines.add(judged.reason());
            return new CardCheck(judged.verdict() == Verdict.WRONG, String.join(". ", lines));
        }
        lines.add("Can be right for its thread and class");
        return new CardCheck(false, String.join(". ", lines) + ".");
    }

    private static @Nullable Plausibility judged(Map<String, String> typed, StatedTorque stated, boolean staged) {
        if (ScrewThread.parse(value(typed, "thread")) instanceof Parsed.Value<ScrewThread> thread
                && PropertyClass.parse(value(typed, "class")) instanceof Parsed.Value<PropertyClass> grade) {
            FrictionSpan span =
                    switch (value(typed, "condition")) {
                        case "oiled" -> FrictionSpan.OILED;
                        case "locker" -> FrictionSpan.LOCKER;
                        default -> FrictionSpan.DRY;
                    };
            return Plausibility.of(
                    thread.value(),
                    grade.value(),
                    span,
                    stated,
                    new Plausibility.Circumstance(putback.quantity.Torque.ZERO, staged, false));
        }
        return null;
    }

    private static String value(Map<String, String> typed, String name) {
        String value = typed.get(name);
        return value == null ? "" : value.strip();
    }
}
