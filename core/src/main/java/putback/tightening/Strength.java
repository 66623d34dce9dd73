package putback.tightening;

/**
 * What a bolt's steel stands, at one diameter.
 *
 * @param tensileMpa least tensile strength
 * @param yieldMpa least yield strength, or stress at 0.2 % elongation left
 * @param proofMpa stress under proof load: it has to come back from it unstretched
 * @param proofIsYield whether the standard states no proof load, so that the load at 0.2 % stands in its place
 */
public record Strength(double tensileMpa, double yieldMpa, double proofMpa, boolean proofIsYield) {
    static Strength of(double tensileMpa, double yieldMpa, double proofMpa) {
        return new Strength(tensileMpa, yieldMpa, proofMpa, false);
    }

    static Strength withoutProof(double tensileMpa, double yieldMpa) {
        return new Strength(tensileMpa, yieldMpa, yieldMpa, true);
    }
}
