package putback.labour.price;

import org.jspecify.annotations.Nullable;

/** Something that an estimate may have to carry. What is of the customer, the car or the garage, no plan knows. */
public enum EstimateEntry {
    DATE("date", "the date"),
    PARTIES("parties", "who the garage and the customer are, and how to reach them"),
    JOB_NUMBER("job number", "one number that ties all papers of the job together"),
    CAR("car", "make, model and year"),
    PLATE_OR_VIN("plate or VIN", "the number plate, or the end of the VIN"),
    VIN("VIN", "the VIN"),
    PLATE("plate", "the number plate"),
    ODOMETER("odometer", "the mileage"),
    COMPLAINT("complaint", "what the customer complains of"),
    ESTIMATE_KIND("kind of estimate", "which kind of estimate the customer chose"),
    WORK("work", "what is done"),
    REQUIRED_OR_SUGGESTED("required or suggested", "whether each part is required or only suggested"),
    PARTS("parts", "each part by its name"),
    PART_NUMBERS("part numbers", "the number of each part"),
    PART_CONDITION("part condition", "whether each part is new, used or rebuilt"),
    PART_PRICES("part prices", "the price of each part"),
    HOURS("hours", "how long it takes"),
    RATE("rate", "what an hour costs"),
    LABOUR_METHOD("labour method", "how labour is reckoned"),
    LABOUR_TOTAL("labour total", "labour in all"),
    TOTAL("total", "the total"),
    MECHANIC("mechanic", "name and certificate number of each mechanic"),
    TEARDOWN("teardown", "what taking apart, putting back and parts spoiled by it cost, if the customer then says no"),
    DECLINED("declined", "safety defects seen and not ordered, with the customer's signature"),
    WARRANTY("warranty", "how long parts and work are warranted");

    private final String word;
    private final String said;

    EstimateEntry(String word, String said) {
        this.word = word;
        this.said = said;
    }

    /** As it is written in a file. */
    public String word() {
        return word;
    }

    /** As a person says it. */
    public String said() {
        return said;
    }

    /** The one that is written so; null when there is none. */
    public static @Nullable EstimateEntry of(String word) {
        for (EstimateEntry one : values()) {
            if (one.word.equals(word)) {
                return one;
            }
        }
        return null;
    }

    /** Whether this estimate says it. */
    public boolean isIn(Estimate estimate) {
        return switch (this) {
            case WORK, PARTS, HOURS, RATE, LABOUR_METHOD, LABOUR_TOTAL, TOTAL -> true;
            case PART_PRICES -> estimate.unpriced().isEmpty();
            default -> false;
        };
    }
}
