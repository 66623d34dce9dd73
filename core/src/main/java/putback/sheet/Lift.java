package putback.sheet;

/** Where and how the car is lifted; empty texts where the sheet does not say. */
public record Lift(String points, String note) {
    public static final Lift NOT_SAID = new Lift("", "");
}
