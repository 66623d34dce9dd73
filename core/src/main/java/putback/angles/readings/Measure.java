package putback.angles.readings;

/** What is read of a wheel. */
public enum Measure {
    CAMBER("camber"),
    TOE("toe"),
    CASTER("caster"),
    SAI("sai");

    private final String word;

    Measure(String word) {
        this.word = word;
    }

    /** As a file names it. */
    public String word() {
        return word;
    }

    /** As a person says it. */
    public String said() {
        return this == SAI ? "inclination (SAI)" : word;
    }
}
