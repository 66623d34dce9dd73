package putback.plan.steps;

import java.util.List;
import putback.sheet.Part;
import putback.sheet.StoredEnergy;

/** In what a new part has to be like the old one, by what the part is. */
final class Comparison {
    private static final String PLAIN = "same shape, size, threads and brackets?";
    /** The first that fits rules: what is said of a hub carrier is not what is said of a hub. */
    private static final List<Measures> BY_NAME = List.of(
            new Measures("same diameter, thickness, height of the bell and holes?", "disc", "drum", "rotor"),
            new Measures(
                    "same shape, ears and thickness, wear wire in the same place?",
                    "pads",
                    "brake-pad",
                    "shoes",
                    "brake-shoe"),
            new Measures("same side, piston, hose thread, and bleed nipple where it will be at the top?", "caliper"),
            new Measures("same length, ends and brackets?", "hose", "pipe", "cable"),
            new Measures("same length, plug, and reach into its bore?", "sensor", "wire"),
            new Measures("same outer size, bore, width and length, its mark the same way?", "bush", "bushing"),
            new Measures(
                    "same bore, outer size, width and bolt holes, encoder on the same side?", "bearing", "hub-unit"),
            new Measures("same bolt circle, centre spigot and splines?", "hub"),
            new Measures("same length, splines and joints at both ends?", "half-shaft", "driveshaft", "shaft"),
            new Measures(
                    "same length, threads and stud tapers?", "link", "rod", "rod-end", "track-rod-end", "ball-joint"),
            new Measures("same shape and thickness, and the same way up?", "seat", "pad", "bump-stop", "gaiter"),
            new Measures(
                    "same shape, bores, bolt holes and brackets?", "beam", "arm", "carrier", "knuckle", "subframe"),
            new Measures("same length pushed in and drawn out, bush widths, threads and brackets?", "damper", "strut"));

    /**
     * @param ids last words of a part's id
     */
    private record Measures(String question, List<String> ids) {
        Measures(String question, String... ids) {
            this(question, List.of(ids));
        }

        boolean fits(String id) {
            for (String word : ids) {
                if (id.equals(word) || id.endsWith("-" + word)) {
                    return true;
                }
            }
            return false;
        }
    }

    private Comparison() {}

    /** The question asked where old and new lie side by side. */
    static String of(Part part) {
        if (part.entry().storedEnergy() == StoredEnergy.SPRING) {
            return "same wire thickness, number of coils, free length and ends?";
        }
        for (Measures measures : BY_NAME) {
            if (measures.fits(part.entry().id()) && !part.entry().id().contains("clutch")) {
                return measures.question;
            }
        }
        return PLAIN;
    }

    /** The same for several in one piece: what the first is, and that all of them are there. */
    static String of(List<Part> parts) {
        String first = of(parts.get(0));
        return parts.size() == 1 ? first : first.substring(0, first.length() - 1) + ", and all that belongs to it?";
    }
}
