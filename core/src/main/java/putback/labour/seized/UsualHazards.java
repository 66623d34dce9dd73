package putback.labour.seized;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a resort does to the things around it, guessed from the words of its id. Common practice, no source. */
public final class UsualHazards {
    /** By how a word begins, so that a grinder is known by grind. */
    private static final Map<String, List<Hazard>> BY_STEM = Map.ofEntries(
            Map.entry("heat", List.of(Hazard.FLAME, Hazard.HOT_METAL)),
            Map.entry("flam", List.of(Hazard.FLAME, Hazard.HOT_METAL)),
            Map.entry("fire", List.of(Hazard.FLAME, Hazard.HOT_METAL)),
            Map.entry("torch", List.of(Hazard.FLAME, Hazard.HOT_METAL)),
            Map.entry("blow", List.of(Hazard.FLAME, Hazard.HOT_METAL, Hazard.BLOWS)),
            Map.entry("burn", List.of(Hazard.FLAME, Hazard.HOT_METAL)),
            Map.entry("gas", List.of(Hazard.FLAME, Hazard.HOT_METAL)),
            Map.entry("oxy", List.of(Hazard.FLAME, Hazard.HOT_METAL, Hazard.SPARKS)),
            Map.entry("acetylene", List.of(Hazard.FLAME, Hazard.HOT_METAL, Hazard.SPARKS)),
            Map.entry("propane", List.of(Hazard.FLAME, Hazard.HOT_METAL)),
            Map.entry("plasma", List.of(Hazard.FLAME, Hazard.HOT_METAL, Hazard.SPARKS)),
            Map.entry("coil", List.of(Hazard.HOT_METAL)),
            Map.entry("induct", List.of(Hazard.HOT_METAL)),
            Map.entry("hot", List.of(Hazard.HOT_METAL)),
            Map.entry("weld", List.of(Hazard.FLAME, Hazard.HOT_METAL, Hazard.SPARKS)),
            Map.entry("cut", List.of(Hazard.SPARKS)),
            Map.entry("grind", List.of(Hazard.SPARKS)),
            Map.entry("saw", List.of(Hazard.SPARKS)),
            Map.entry("disc", List.of(Hazard.SPARKS)),
            Map.entry("drill", List.of(Hazard.SPARKS)),
            Map.entry("hammer", List.of(Hazard.BLOWS)),
            Map.entry("impact", List.of(Hazard.BLOWS)),
            Map.entry("shock", List.of(Hazard.BLOWS)),
            Map.entry("hit", List.of(Hazard.BLOWS)),
            Map.entry("chisel", List.of(Hazard.BLOWS)),
            Map.entry("punch", List.of(Hazard.BLOWS)));

    /** Stems that are looked for inside a word too: airhammer, oxyacetylene. */
    private static final int LONG_ENOUGH = 5;

    /** What wets, brushes, rocks, grips, presses or splits without heat, sparks or blows. */
    private static final List<String> HARMLESS = List.of(
            "penetrant",
            "brush",
            "wire",
            "rock",
            "tighten",
            "soak",
            "oil",
            "wax",
            "grip",
            "spanner",
            "press",
            "pull",
            "splitter",
            "extractor",
            "socket",
            "key",
            "hand",
            "bar",
            "clean",
            "thread");

    private UsualHazards() {}

    /** Those of every word of the id, each once; none where no word is known. */
    public static List<Hazard> of(String id) {
        List<Hazard> hazards = new ArrayList<>();
        for (Map.Entry<String, List<Hazard>> stem : new TreeMap<>(BY_STEM).entrySet()) {
            if (names(id, stem.getKey())) {
                for (Hazard hazard : stem.getValue()) {
                    if (!hazards.contains(hazard)) {
                        hazards.add(hazard);
                    }
                }
            }
        }
        return hazards;
    }

    /** Whether some word of the id is known to do none of this. */
    static boolean isHarmless(String id) {
        for (String word : HARMLESS) {
            if (names(id, word)) {
                return true;
            }
        }
        return false;
    }

    private static boolean names(String id, String stem) {
        if (stem.length() >= LONG_ENOUGH) {
            return id.contains(stem);
        }
        return id.startsWith(stem) || id.contains("-" + stem);
    }
}
