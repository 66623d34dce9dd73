package putback.store.sheets;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import putback.sheet.Condition;
import putback.sheet.Height;
import putback.sheet.JointKind;
import putback.sheet.Station;
import putback.sheet.StoredEnergy;
import putback.sheet.TetherKind;
import putback.sheet.Worded;

/** The words that a key takes, each with its meaning, in the order in which they are told. */
final class Words {
    static final Map<String, JointKind> KINDS = words(JointKind.values());
    static final Map<String, Station> STATIONS = words(Station.values());
    static final Map<String, Condition> CONDITIONS = words(Condition.values());
    static final Map<String, TetherKind> TETHERS = words(TetherKind.values());
    static final Map<String, StoredEnergy> ENERGIES =
            words(StoredEnergy.SPRING, StoredEnergy.GAS, StoredEnergy.TWISTED_BAR);
    static final Map<String, Height> TIGHTEN = words(Height.RAISED, Height.RIDE_HEIGHT, Height.ON_WHEELS);
    static final Map<String, Height> BREAK_LOOSE = words(Height.ON_WHEELS);
    static final Map<String, Height> OPENED = words(Height.RAISED, Height.ON_WHEELS, Height.ANY);
    static final Map<String, Height> FOLLOWED = words(Height.values());
    static final Map<String, Boolean> TURNS = pair("right-hand", false, "left-hand", true);
    static final Map<String, Boolean> SOLD = pair("each", false, "axle set", true);
    static final Map<String, Boolean> SIDES = pair("none", false, "both", true);
    static final Map<String, Boolean> THEN = Map.of("let down", true);

    private Words() {}

    @SafeVarargs
    static <E extends Worded> Map<String, E> words(E... meanings) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E meaning : meanings) {
            words.put(meaning.word(), meaning);
        }
        return Collections.unmodifiableMap(words);
    }

    private static Map<String, Boolean> pair(String no, boolean first, String yes, boolean second) {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put(no, first);
        words.put(yes, second);
        return Collections.unmodifiableMap(words);
    }
}
