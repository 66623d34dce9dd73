package putback.app.web.job;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import putback.app.web.frame.Form;
import putback.job.Odometer;
import putback.quantity.Parsed;
import putback.quantity.Shown;
import putback.store.books.Arrival;

/**
 * What a form says of another look at a car.
 *
 * @param due its day, empty where the form asks for none
 * @param distance what the car's clock shows then, in digits; empty where nobody has said
 */
record RecheckForm(String due, String distance) {
    /**
     * One that is to come.
     *
     * @param today before which nothing can be booked
     */
    static Parsed<RecheckForm> booked(Form form, Arrival arrival, LocalDate today) {
        String typed = form.text("due");
        LocalDate due;
        try {
            due = LocalDate.parse(typed);
        } catch (DateTimeParseException none) {
            return new Parsed.Refused<>(Shown.text(typed) + " is no day; give one such as " + today);
        }
        if (due.isBefore(today)) {
            return new Parsed.Refused<>(
                    "the day " + due + " has passed; today is " + today + ", give that or a later one");
        }
        return distance(form, arrival).map(distance -> new RecheckForm(due.toString(), distance));
    }

    /** One that was done: what was seen is what it was done for. */
    static Parsed<RecheckForm> done(Form form, Arrival arrival) {
        if (form.text("seen").isEmpty()) {
            return new Parsed.Refused<>("write down what was seen, such as the torques, or that nothing had moved");
        }
        return distance(form, arrival).map(distance -> new RecheckForm("", distance));
    }

    private static Parsed<String> distance(Form form, Arrival arrival) {
        String typed = form.text("distance");
        if (typed.isEmpty()) {
            return new Parsed.Value<>("");
        }
        String before = arrival.distanceOut().isEmpty() ? arrival.distanceIn() : arrival.distanceOut();
        if (!(Odometer.read(typed) instanceof Parsed.Value<Odometer> read)) {
            return new Parsed.Refused<>(Odometer.read(typed).refusal());
        }
        int reading = read.value().reading();
        boolean back = Odometer.read(before) instanceof Parsed.Value<Odometer> then
                && reading < then.value().reading();
        return back
                ? new Parsed.Refused<>("mileage " + reading + " is less than " + before
                        + ", which the car had in this job; a car's clock does not run backwards")
                : new Parsed.Value<>(String.valueOf(reading));
    }
}
