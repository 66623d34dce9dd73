package putback.app.papers;

import java.util.List;

/**
 * A paper before it is set: what it is called, whose it is, and its pieces.
 *
 * @param title what it is about, in the head of every page
 * @param subtitle a line below; may be empty
 */
public record Paper(Kind kind, String title, String subtitle, JobHead head, HouseStyle style, List<Block> blocks) {
    private static final int[] HEAD_WIDTHS = {22, 17, 25, 36};

    /** What a paper is. */
    public enum Kind {
        JOB_CARD("Job card", true),
        ESTIMATE("Estimate", false),
        TIGHTENING_RECORD("Tightening record", true),
        FILL_IN_CARD("Fill-in card", true),
        WHEEL_ANGLES("Wheel angles", true),
        HANDOVER("Handover and invoice", false);

        private final String word;
        private final boolean atTheCar;

        Kind(String word, boolean atTheCar) {
            this.word = word;
            this.atTheCar = atTheCar;
        }

        public String word() {
            return word;
        }
    }

    public Paper {
        blocks = List.copyOf(blocks);
    }

    /** What stands in the head of every page: the kind, the job's number where there is one, the title. */
    public String running() {
        String number = head.number().isEmpty() ? "" : ", job " + head.number();
        return kind.word() + number + ": " + title;
    }

    /** What the margin below every page says. */
    public String foot() {
        String garage = head.garage().garage();
        String name = garage.isEmpty() ? "" : garage + ". ";
        return kind.atTheCar ? name + "The car maker's data and procedure rule over this paper." : name.strip();
    }

    /** How wide each of the four boxes of a row is, in percent. */
    public int headWidth(int box) {
        return HEAD_WIDTHS[box];
    }

    /** The unit is said once: by what was read, or where nothing was, by the garage. */
    private String odometer(CarLine car) {
        return car.odometerIn().matches(".*(km|mi)") ? "Odometer" : "Odometer, " + style.distanceUnit();
    }

    /** The boxes below the title, four in a row; an empty one is written in by hand. */
    public List<List<Block.Field>> headRows() {
        CarLine car = head.car();
        String out = car.odometerOut().isEmpty() ? "" : " in, " + car.odometerOut() + " out";
        return List.of(
                List.of(
                        new Block.Field("Job number", head.number()),
                        new Block.Field("Date", head.on() == null ? "" : style.date(head.on())),
                        new Block.Field(odometer(car), car.odometerIn() + out),
                        new Block.Field(
                                "Customer", String.join(", ", head.customer().lines()))),
                List.of(
                        new Block.Field("Car", car.car()),
                        new Block.Field("Plate", car.plate()),
                        new Block.Field("VIN", car.vin()),
                        new Block.Field("Mechanic", head.mechanic())));
    }
}
