package putback.store.books;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Text made comparable: small letters, no accents, nothing but letters, digits and single spaces. */
final class Searched {
    private static final int MOST_WORDS = 8;

    private Searched() {}

    static String text(String... parts) {
        StringBuilder out = new StringBuilder();
        for (String part : parts) {
            String plain = Normalizer.normalize(part, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
            boolean gap = true;
            if (!out.isEmpty()) {
                out.append(' ');
            }
            for (int i = 0; i < plain.length(); i++) {
                char c = plain.charAt(i);
                if (Character.isLetterOrDigit(c)) {
                    out.append(c);
                    gap = false;
                } else if (Character.getType(c) != Character.NON_SPACING_MARK && !gap) {
                    out.append(' ');
                    gap = true;
                }
            }
        }
        return out.toString().strip();
    }

    /** A plate or VIN without what people put between its characters. */
    static String run(String text) {
        return text(text).replace(" ", "");
    }

    /** The words of a question, each to be found somewhere. */
    static List<String> words(String typed) {
        List<String> words = new ArrayList<>();
        for (String word : text(typed).split(" ", -1)) {
            if (!word.isEmpty() && words.size() < MOST_WORDS) {
                words.add(word);
            }
        }
        return words;
    }
}
