package putback.app.papers;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What every paper of a job says at its top.
 *
 * @param number ties all papers of a job together; empty when there is none yet
 * @param on the day of the paper, and of the file; null leaves a line to write it on
 * @param mechanic who works on it; may be empty
 */
public record JobHead(
        String number, @Nullable LocalDate on, Letterhead garage, CarLine car, CustomerLine customer, String mechanic) {
    /** Nothing known: everything is written by hand. */
    public static final JobHead BLANK = new JobHead("", null, Letterhead.NONE, CarLine.NONE, CustomerLine.NONE, "");

    /** Nothing known but the day. */
    public static JobHead on(@Nullable LocalDate day) {
        return of("", day);
    }

    /** The same on another day. */
    public JobHead dated(LocalDate day) {
        return new JobHead(number, day, garage, car, customer, mechanic);
    }

    /** Nothing known but number and day. */
    public static JobHead of(String number, @Nullable LocalDate day) {
        return new JobHead(number, day, Letterhead.NONE, CarLine.NONE, CustomerLine.NONE, "");
    }
}
