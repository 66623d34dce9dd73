package putback.plan.selection;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import putback.quantity.Shown;
import putback.sheet.Nearest;
import putback.sheet.Side;

/** What is meant by a word that is no id: the name that stands on the ladder, with or without its side. */
final class ByName {
    private final Map<String, Target> known;
    private final Set<Side> sides;

    ByName(Map<String, Target> known, Set<Side> sides) {
        this.known = known;
        this.sides = sides;
    }

    /**
     * What is so called, on the sides that are asked for; none where nothing is, or more than one thing. Capitals,
     * spaces, hyphens and commas make no difference.
     */
    List<Target> find(String word) {
        List<Target> found = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        for (Target target : known.values()) {
            if (isCalled(target, word) && (target.side() == Side.NONE || sides.contains(target.side()))) {
                found.add(target);
                ids.add(plainId(target));
            }
        }
        return ids.size() == 1 ? found : List.of();
    }

    private static boolean isCalled(Target target, String word) {
        String asked = letters(word);
        String plain = letters(target.plainName());
        return asked.equals(plain)
                || target.side() != Side.NONE
                        && (asked.equals(plain + target.side().word())
                                || asked.equals(target.side().word() + plain));
    }

    private static String letters(String words) {
        StringBuilder letters = new StringBuilder(words.length());
        for (int i = 0; i < words.length(); i++) {
            if (Character.isLetterOrDigit(words.charAt(i))) {
                letters.append(words.charAt(i));
            }
        }
        return letters.toString().toLowerCase(Locale.ROOT);
    }

    /** Why a word means nothing here, and what would be right. */
    String unknown(String word) {
        if (word.equals("body")) {
            return "body is the car itself and cannot be renewed; name a part that comes off it";
        }
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            String plain = word.startsWith(side.prefix())
                    ? word.substring(side.prefix().length())
                    : "";
            if (known.containsKey(plain)) {
                return "the " + plain + " exists once and has no side; write " + plain;
            }
        }
        Map<String, String> names = new LinkedHashMap<>();
        for (Target target : known.values()) {
            names.putIfAbsent(plainId(target), target.plainName());
        }
        List<String> likely = likely(word, names);
        return "no part or unit is called " + Shown.text(word)
                + (likely.isEmpty()
                        ? "; there are: " + String.join(", ", named(names.keySet(), names))
                        : "; maybe " + String.join(" or ", likely));
    }

    private List<String> likely(String word, Map<String, String> names) {
        String asked = letters(word);
        Set<String> same = new LinkedHashSet<>();
        for (Map.Entry<String, String> entry : names.entrySet()) {
            if (letters(entry.getValue()).equals(asked)) {
                same.add(entry.getKey());
            }
        }
        if (!same.isEmpty()) {
            return named(same, names);
        }
        String near = Nearest.to(word, known.keySet());
        near = near.isEmpty() ? Nearest.to(word, names.keySet()) : near;
        if (!near.isEmpty()) {
            return List.of(near);
        }
        Map<String, String> byName = new LinkedHashMap<>();
        names.forEach((id, name) -> byName.putIfAbsent(letters(name), id));
        String nearName = byName.get(Nearest.to(asked, byName.keySet()));
        return nearName == null ? List.of() : named(Set.of(nearName), names);
    }

    /** Ids, each with its name where that says something else. */
    private static List<String> named(Collection<String> ids, Map<String, String> names) {
        List<String> named = new ArrayList<>();
        for (String id : ids) {
            String name = names.getOrDefault(id, id);
            named.add(letters(name).equals(letters(id)) ? id : id + " (" + name + ")");
        }
        return named;
    }

    private static String plainId(Target target) {
        return target.id().substring(target.id().indexOf('.') + 1);
    }
}
