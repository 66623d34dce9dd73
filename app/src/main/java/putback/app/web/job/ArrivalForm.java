package putback.app.web.job;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import putback.app.web.frame.Form;
import putback.job.Odometer;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.quantity.Shown;
import putback.store.books.Arrival;
import putback.store.books.Heights;

/** What the form about a car's arrival says: figures that can be reckoned with, or what is wrong with them. */
public final class ArrivalForm {
    private static final double LEAST_HEIGHT_MM = 50;
    private static final double MOST_HEIGHT_MM = 1500;

    private final Form form;
    private final List<String> faults = new ArrayList<>();

    private ArrivalForm(Form form) {
        this.form = form;
    }

    /** Reads it; a refusal names every field that cannot be kept so. */
    public static Parsed<Arrival> read(Form form) {
        return new ArrivalForm(form).read();
    }

    private Parsed<Arrival> read() {
        if (!form.fault().isEmpty()) {
            return new Parsed.Refused<>(form.fault());
        }
        if (form.text("complaint").isEmpty()) {
            faults.add("write down what is wrong, in the owner’s words");
        }
        String in = distance("distance");
        String out = distance("distance-out");
        if (faults.isEmpty() && !in.isEmpty() && !out.isEmpty() && Integer.parseInt(out) < Integer.parseInt(in)) {
            faults.add("mileage out " + out + " is less than " + in + " on arrival");
        }
        Heights heights = new Heights(
                height("fl", "front left"),
                height("fr", "front right"),
                height("rl", "rear left"),
                height("rr", "rear right"));
        Arrival arrival = new Arrival(form.text("complaint"), form.text("conditions"), in, out, heights, promised());
        return faults.isEmpty() ? new Parsed.Value<>(arrival) : new Parsed.Refused<>(String.join("; ", faults));
    }

    private String distance(String name) {
        String typed = form.text(name);
        return typed.isEmpty()
                ? ""
                : Odometer.read(typed)
                        .map(odometer -> String.valueOf(odometer.reading()))
                        .or(typed, faults::add);
    }

    /** As typed; millimetres where no unit is named. */
    private String height(String name, String where) {
        String typed = form.text(name);
        if (typed.isEmpty()) {
            return "";
        }
        String measured = typed.matches("[0-9]+([.,][0-9]+)?") ? typed + " mm" : typed;
        Parsed<Length> length = Length.parse(measured);
        if (length instanceof Parsed.Value<Length> read
                && read.value().millimetres() >= LEAST_HEIGHT_MM
                && read.value().millimetres() <= MOST_HEIGHT_MM) {
            return measured;
        }
        faults.add("height " + where + " " + Shown.text(typed)
                + " is no height of a hub below its arch; write it such as 352 mm or 13.9 in");
        return typed;
    }

    private String promised() {
        String typed = form.text("promised");
        if (typed.isEmpty()) {
            return "";
        }
        try {
            return LocalDateTime.parse(typed.replace(' ', 'T')).toString();
        } catch (DateTimeParseException noTime) {
            faults.add("promised for " + Shown.text(typed) + " is no day and time; write it such as 2026-11-03 16:00");
            return typed;
        }
    }
}
