package putback.labour.seized;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a resort does to the things around it, guessed from the words of its id. Common practice, no source. */
public final class UsualHazards {
    private static final Map<String, List<Hazard>> BY_WORD = Map.ofEntries(
            Map.entry("heat", List.of(Hazard.FLAME, Hazard.HOT_METAL)),
            Map.entry("flame", List.of(Hazard.FLAME, Hazard.HOT_METAL)),
            Map.entry("torch", List.of(Hazard.FLAME, Hazard.HOT_METAL)),
            Map.entry("coil", List.of(Hazard.HOT_METAL)),
            Map.entry("weld", List.of(Hazard.FLAME, Hazard.HOT_METAL, Hazard.SPARKS)),
            Map.entry("cut", List.of(Hazard.SPARKS)),
            Map.entry("grind", List.of(Hazard.SPARKS)),
            Map.entry("hammer", List.of(Hazard.BLOWS)),
            Map.entry("shock", List.of(Hazard.BLOWS)),
            Map.entry("chisel", List.of(Hazard.BLOWS)));

    private UsualHazards() {}

    /** Those of every word of the id, each once; none where no word is known. */
    public static List<Hazard> of(String id) {
        List<Hazard> hazards = new ArrayList<>();
        for (String word : id.split("-", -1)) {
            for (Hazard hazard : BY_WORD.getOrDefault(word, List.of())) {
                if (!hazards.contains(hazard)) {
                    hazards.add(hazard);
                }
            }
        }
        return hazards;
    }
}
