package putback.quantity;

/** What a quantity measures, with the words a refusal needs. Torque and energy are different kinds, whatever the units say. */
enum Kind {
    TORQUE("a torque", "N·m, lbf·ft, lbf·in or kgf·m", "98 N·m or 72 lbf·ft"),
    LENGTH("a length", "mm, cm, m or in", "18 mm or 9/16 in"),
    DISTANCE("a distance", "km or mi", "120000 km or 75000 mi"),
    ANGLE("an angle", "deg or rad", "90 deg or 90°"),
    TIME("a time", "s, min or h", "3 min or 36 s"),
    FORCE("a force", "kN, N or lbf", "50 kN"),
    MASS("a mass", "kg or lb", "1.5 kg"),
    STRESS("a stress", "MPa", "640 MPa"),
    SPRING_RATE("a spring rate", "N/mm", "28 N/mm");

    private final String phrase;
    private final String units;
    private final String example;

    Kind(String phrase, String units, String example) {
        this.phrase = phrase;
        this.units = units;
        this.example = example;
    }

    /** With its article, such as {@code a torque}. */
    String phrase() {
        return phrase;
    }

    /** The units that are accepted, for a person. */
    String units() {
        return units;
    }

    String example() {
        return example;
    }
}
