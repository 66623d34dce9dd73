package putback.angles.adjusting;

import java.util.List;
import putback.angles.readings.CarReading;

/**
 * One car on the gauge.
 *
 * @param title what it is called; may be empty
 * @param adjusters in the order of the file
 */
public record AngleJob(String title, CarReading reading, List<Wanted> wanted, List<Adjuster> adjusters) {
    public AngleJob {
        wanted = List.copyOf(wanted);
        adjusters = List.copyOf(adjusters);
    }

    /** What to turn; where there are no adjusters, how it stands against what is wanted. */
    public Turned turned() {
        return Adjusting.of(reading.angles(), adjusters, wanted);
    }
}
