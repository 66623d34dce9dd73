package putback.app.papers;

/**
 * Which car it is. Whatever is not known is empty.
 *
 * @param car make, model and year, in the garage's own words
 * @param odometerIn as read on arrival, with its unit
 * @param odometerOut as read at handover, with its unit
 */
public record CarLine(String car, String plate, String vin, String odometerIn, String odometerOut) {
    public static final CarLine NONE = new CarLine("", "", "", "", "");
}
