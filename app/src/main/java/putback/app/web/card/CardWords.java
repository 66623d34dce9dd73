package putback.app.web.card;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.store.sheets.Piece;
import putback.store.sheets.Piece.Entries;
import putback.store.sheets.Piece.Text;

/**
 * What is typed on the fill-in card, and what a sheet says for it. A bare number is in the garage's own unit.
 *
 * @param torqueUnit of a torque typed without one
 */
public record CardWords(String torqueUnit) {
    /** What is typed for a thing that was looked for and not found out. */
    private static final Pattern UNKNOWN = Pattern.compile("\\?|not known", Pattern.CASE_INSENSITIVE);

    private static final Pattern KEY =
            Pattern.compile("(?:k|key)\\s*([\\d.,]+)(.*)|([\\d.,]+)\\s*(.*?)\\s*(?:k|key)", Pattern.CASE_INSENSITIVE);
    private static final Pattern STAGED = Pattern.compile("(.+?)\\s*(?:\\+|,?\\s*then\\s)\\s*(.+)");

    /** What it says in a sheet; {@link Piece#NOTHING} for what is not known. */
    public Piece said(String key, String typed) {
        if (UNKNOWN.matcher(typed).matches()) {
            return Piece.NOTHING;
        }
        return switch (key) {
            case "hex" -> Text.of(sized(typed));
            case "hold" -> held(typed);
            case "torque" -> torque(typed);
            default -> Text.of(typed);
        };
    }

    private Piece torque(String typed) {
        Matcher staged = STAGED.matcher(typed);
        if (!staged.matches()) {
            return typed.isEmpty() ? Piece.NOTHING : Text.of(newtonMetres(withUnit(typed, torqueUnit)));
        }
        return Entries.NONE
                .with("torque", Text.of(newtonMetres(withUnit(staged.group(1), torqueUnit))))
                .with("angle", Text.of(withUnit(staged.group(2), "deg")));
    }

    /** On a card for torques nobody means nanometres. */
    private static String newtonMetres(String typed) {
        return typed.replaceFirst("(?i)\\s*nm$", " Nm");
    }

    private static Piece held(String typed) {
        Matcher key = KEY.matcher(typed);
        if (!key.matches()) {
            return Entries.NONE.with("hex", Text.of(sized(typed.replaceFirst("(?i)^hex\\s*|\\s*hex$", ""))));
        }
        String size = key.group(1) == null
                ? key.group(3) + " " + key.group(4)
                : key.group(1) + " " + key.group(2).strip();
        return Entries.NONE.with("key", Text.of(sized(size.strip())));
    }

    private static String sized(String typed) {
        return withUnit(typed, "mm");
    }

    private static String withUnit(String typed, String unit) {
        return PlainNumber.parse(typed) instanceof Parsed.Value ? typed.strip() + " " + unit : typed.strip();
    }

    /** What stands in the field for it; empty where the sheet says nothing, or that it is not known. */
    static String typed(String key, @Nullable Piece said) {
        if (said instanceof Text text) {
            return Piece.isNothing(text) ? "" : text.text();
        }
        if (!(said instanceof Entries entries)) {
            return "";
        }
        if (key.equals("hold")) {
            String hex = typed("", entries.get("hex"));
            return hex.isEmpty() ? typed("", entries.get("key")) + " key" : hex;
        }
        String angle = typed("", entries.get("angle"));
        return typed("", entries.get("torque")) + (angle.isEmpty() ? "" : " + " + angle);
    }

    /** Whether a source was left out on purpose. */
    static boolean isNone(String typed) {
        return typed.equals("-") || typed.toLowerCase(Locale.ROOT).equals("none");
    }
}
