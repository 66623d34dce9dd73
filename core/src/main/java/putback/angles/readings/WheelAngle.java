package putback.angles.readings;

/** One measure of one wheel. */
public record WheelAngle(Place place, Measure measure) {
    /** As a file names it: {@code front.left.toe}. */
    public String word() {
        return place.word() + "." + measure.word();
    }
}
