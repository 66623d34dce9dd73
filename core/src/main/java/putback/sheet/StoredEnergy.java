package putback.sheet;

/** Energy that a part keeps after the car is switched off and lifted. */
public enum StoredEnergy implements Worded {
    NONE(""),
    SPRING("spring"),
    GAS("gas"),
    TWISTED_BAR("bar under twist");

    private final String word;

    StoredEnergy(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
