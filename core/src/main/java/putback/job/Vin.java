package putback.job;

import putback.quantity.Parsed;
import putback.quantity.Shown;

/**
 * A vehicle identification number: 17 letters and digits without I, O and Q (ISO 3779).
 *
 * @param text upper case, without spaces or hyphens
 */
public record Vin(String text) {
    private static final int LENGTH = 17;
    private static final int CHECK_PLACE = 8;
    private static final int MODULUS = 11;
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};

    /** What A to Z count; I, O and Q do not occur. */
    private static final int[] LETTERS = {
        1, 2, 3, 4, 5, 6, 7, 8, -1, 1, 2, 3, 4, 5, -1, 7, -1, 9, 2, 3, 4, 5, 6, 7, 8, 9
    };

    /** Reads what was typed or scanned; spaces and hyphens do no harm. */
    public static Parsed<Vin> read(String typed) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            if (c != ' ' && c != '-') {
                text.append(c >= 'a' && c <= 'z' ? (char) (c - 'a' + 'A') : c);
            }
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == 'I' || c == 'O' || c == 'Q') {
                return new Parsed.Refused<>("VIN " + Shown.text(typed) + " has the letter " + c + " at place " + (i + 1)
                        + "; no VIN has I, O or Q, maybe it is " + (c == 'I' ? "1" : "0"));
            }
            if (value(c) < 0) {
                return new Parsed.Refused<>("VIN " + Shown.text(typed) + " has \"" + Shown.text(String.valueOf(c))
                        + "\" at place " + (i + 1) + "; only digits and letters are in one");
            }
        }
        return text.length() == LENGTH
                ? new Parsed.Value<>(new Vin(text.toString()))
                : new Parsed.Refused<>("VIN " + Shown.text(typed) + " has " + text.length()
                        + " characters; one has 17 (older cars have other numbers: write those in the note)");
    }

    private static int value(char c) {
        return c >= '0' && c <= '9' ? c - '0' : c >= 'A' && c <= 'Z' ? LETTERS[c - 'A'] : -1;
    }

    /** The digit that place 9 has where the market uses it. Source: 49 CFR 565.15(c), Tables III to V. */
    public char checkDigit() {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            sum += WEIGHTS[i] * value(text.charAt(i));
        }
        int rest = sum % MODULUS;
        return rest == MODULUS - 1 ? 'X' : (char) ('0' + rest);
    }

    /** Whether place 9 is the check digit. North American cars must agree; elsewhere many do not have one. */
    public boolean agrees() {
        return text.charAt(CHECK_PLACE) == checkDigit();
    }

    /** What to say beside the number; empty when its check digit agrees. */
    public String doubt() {
        if (agrees()) {
            return "";
        }
        boolean american = text.charAt(0) >= '1' && text.charAt(0) <= '5';
        String said = "Place 9 is " + text.charAt(CHECK_PLACE) + "; as a check digit it would be " + checkDigit() + ".";
        return american
                ? said + " North American cars have one: look at the number again."
                : said + " Cars of many markets have none, so it may be right: compare it with the car.";
    }
}
