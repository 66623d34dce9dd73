package putback.app.papers;

import java.util.ArrayList;
import java.util.List;

/** Lines of which only those are kept that say something. */
final class Lines {
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
