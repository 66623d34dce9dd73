package putback.labour.seized;

import static putback.labour.seized.Hazard.BLOWS;
import static putback.labour.seized.Hazard.FLAME;
import static putback.labour.seized.Hazard.HOT_METAL;
import static putback.labour.seized.Hazard.SPARKS;

import java.util.Set;
import putback.sheet.Worded;

/** What is near a fastener, and which hazards it must not get. Common practice, no source; the car's maker rules. */
public enum Nearby implements Worded {
    HOSE("hose", "it melts inside where nobody sees it: move it away or renew it", FLAME, HOT_METAL, SPARKS),
    WIRE("wire", "its cover melts and the fault shows later: move it away", FLAME, HOT_METAL, SPARKS),
    RUBBER("rubber", "a gaiter or bush that is to be kept burns", FLAME, HOT_METAL, SPARKS),
    BEARING("bearing", "grease boils, seals die and races are dented", FLAME, HOT_METAL, BLOWS),
    GAS("gas", "a damper or spring filled with gas may burst", FLAME, HOT_METAL, SPARKS),
    SPRING("spring", "it loses its temper and may break later", FLAME, HOT_METAL, SPARKS),
    AIRBAG("airbag", "heat or a blow may fire or disable it or a belt tensioner", FLAME, HOT_METAL, BLOWS),
    HIGH_VOLTAGE("high voltage", "only a trained person works here", FLAME, HOT_METAL, SPARKS, BLOWS),
    TANK("tank", "fuel and its vapour take fire", FLAME, HOT_METAL, SPARKS),
    ALLOY("alloy", "aluminium and magnesium soften, crack or burn", FLAME, BLOWS),
    TYRE("tyre", "a tyre on its rim may explode: take the wheel off first", FLAME, HOT_METAL),
    SOLVENT("solvent", "hot brake cleaner makes poisonous gas: let it dry first", FLAME, HOT_METAL, SPARKS),
    CAVITY("cavity", "steam in a closed tube bursts it: vent it first", FLAME, HOT_METAL);

    /** What can be tied away, taken off, dried or vented before the fastener is attempted. */
    private static final Set<Nearby> MOVABLE = Set.of(HOSE, WIRE, TYRE, SOLVENT, CAVITY);

    private final String word;
    private final String because;
    private final Set<Hazard> forbidden;

    Nearby(String word, String because, Hazard... forbidden) {
        this.word = word;
        this.because = because;
        this.forbidden = Set.of(forbidden);
    }

    @Override
    public String word() {
        return word;
    }

    /** Why, as half a sentence. */
    public String because() {
        return because;
    }

    /** Whether it cannot be put out of the way. Common practice, no source. */
    public boolean stays() {
        return !MOVABLE.contains(this);
    }

    public boolean forbids(Hazard hazard) {
        return forbidden.contains(hazard);
    }
}
