package putback.store.books;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Words of the trade that mean the same in British and American workshops, so that a search for one finds the other.
 * Common practice, no source; single words only, as a search has them.
 */
final class Glossary {
    private static final List<Set<String>> SAME = List.of(
            Set.of("damper", "shock", "absorber"),
            Set.of("tyre", "tire"),
            Set.of("kerb", "curb"),
            Set.of("aluminium", "aluminum"),
            Set.of("spanner", "wrench"),
            Set.of("bush", "bushing"),
            Set.of("disc", "rotor"),
            Set.of("wishbone", "arm"),
            Set.of("subframe", "cradle"),
            Set.of("handbrake", "parking"),
            Set.of("track", "tie"),
            Set.of("circlip", "snap"),
            Set.of("gaiter", "boot"),
            Set.of("castor", "caster"),
            Set.of("clonk", "clunk", "knock", "knocks", "knocking"),
            Set.of("drone", "growl", "hum", "rumble"),
            Set.of("kpi", "sai"),
            Set.of("carrier", "knuckle", "upright"),
            Set.of("ramp", "lift", "hoist"),
            Set.of("tracking", "alignment", "geometry"),
            Set.of("roll", "sway"),
            Set.of("propshaft", "driveshaft"));

    private Glossary() {}

    /** The word itself first, then what else it is called. */
    static List<String> alternatives(String word) {
        Set<String> all = new LinkedHashSet<>();
        all.add(word);
        for (Set<String> group : SAME) {
            if (group.contains(word)) {
                group.stream().sorted().forEach(all::add);
            }
        }
        return List.copyOf(all);
    }
}
