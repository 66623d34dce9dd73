package putback.ledger;

import java.util.Comparator;
import java.util.List;

/**
 * What does the most harm comes first: by the place on the car, then by what is wrong there. The order of the places is
 * common practice, no source: wheels, steering and ball joints, pinch bolts, axle nuts, brakes, struts, arms and dampers,
 * springs. A joint is placed by the words of its id; one that no word places comes after them.
 */
final class Harm {
    private static final List<List<String>> PLACES = List.of(
            List.of("wheel-nut", "wheel-bolt"),
            List.of("track-rod", "tie-rod", "ball-joint", "rack"),
            List.of("pinch"),
            List.of("axle", "hub-nut", "shaft"),
            List.of("caliper", "brake", "pad", "hose", "pipe", "bleed", "pedal", "slide", "pin-bolt"),
            List.of("strut", "top-mount", "rod-nut"),
            List.of("arm", "damper", "beam", "link"),
            List.of("spring"));

    static final Comparator<Debt> WORST_FIRST = Comparator.comparingInt((Debt debt) -> place(debt.subject()))
            .thenComparing(Debt::kind)
            .thenComparing(Debt::subject);

    private Harm() {}

    /** Whether it is one of the places where something comes off, or steering or brakes go with it. */
    static boolean isCritical(String id) {
        return place(id) < PLACES.size();
    }

    private static int place(String id) {
        if (id.equals("wheel") || id.endsWith(".wheel")) {
            return 0;
        }
        for (int place = 0; place < PLACES.size(); place++) {
            for (String word : PLACES.get(place)) {
                if (names(id, word)) {
                    return place;
                }
            }
        }
        return PLACES.size();
    }

    /** Whether the word begins one of the id's own: {@code arm} is in {@code left.arm-front}, not in {@code alarm}. */
    private static boolean names(String id, String word) {
        for (int at = id.indexOf(word); at >= 0; at = id.indexOf(word, at + 1)) {
            if (at == 0 || !Character.isLetterOrDigit(id.charAt(at - 1))) {
                return true;
            }
        }
        return false;
    }
}
