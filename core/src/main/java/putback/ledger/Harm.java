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

    private static int place(String id) {
        for (int place = 0; place < PLACES.size(); place++) {
            for (String word : PLACES.get(place)) {
                if (id.contains(word)) {
                    return place;
                }
            }
        }
        return PLACES.size();
    }
}
