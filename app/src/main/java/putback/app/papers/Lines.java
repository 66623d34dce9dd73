package putback.app.papers;

import java.util.ArrayList;
import java.util.List;

/** Lines of which only those are kept that say something. */
final class Lines {
    /** A blank at which no line breaks, for numbers that are read in one go. */
    static final char FIRM = '\u00a0';

    private final List<String> lines = new ArrayList<>();

    void add(String before, String words) {
        if (!words.isBlank()) {
            lines.add(before + words.strip());
        }
    }

    List<String> all() {
        return List.copyOf(lines);
    }
}
