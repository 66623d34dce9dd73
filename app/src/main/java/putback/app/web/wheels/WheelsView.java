package putback.app.web.wheels;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.AngleJob;
import putback.angles.adjusting.Turned;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.app.json.JsonWriter;
import putback.app.text.AnglesText;
import putback.app.web.frame.Answer;
import putback.app.wheels.CarSvg;
import putback.store.sheets.AnglesRead;
import putback.store.sheets.AnglesReader;
import putback.store.sheets.Fault;

/**
 * Wheel angles as the page shows them: readings typed into fields, or a whole file.
 *
 * @param values what was typed, by name
 * @param faults a line each; empty where all is well
 * @param answer null where nothing is asked yet, or something is wrong
 */
public record WheelsView(
        Map<String, String> values,
        List<String> faults,
        @Nullable Answer answer) {
    private static final String FILE = "file";
    private static final String RATIO = "steering-ratio";
    private static final String READ_AT = "toe-read-at";

    /**
     * @param drawing the car from above, SVG
     * @param text the same as the command prints
     */
    public record Answer(String drawing, String text) {}

    public WheelsView {
        faults = List.copyOf(faults);
    }

    /** The value that was typed; empty where there is none. */
    public String value(String name) {
        return values.getOrDefault(name, "");
    }

    public List<Place> places() {
        return List.of(Place.values());
    }

    /** What a wheel's fields ask for. */
    public List<Measure> measures(Place place) {
        return place.isFront() ? List.of(Measure.values()) : List.of(Measure.CAMBER, Measure.TOE);
    }

    /** Name of a field, such as {@code front.left.camber}. */
    public String field(Place place, Measure measure) {
        return place.word() + "." + measure.word();
    }

    static WheelsView of(Map<String, String> typed) {
        Map<String, String> values = new LinkedHashMap<>();
        typed.forEach((name, value) -> {
            if (!value.isBlank()) {
                values.put(name, value);
            }
        });
        WheelsView empty = new WheelsView(values, List.of(), null);
        String file = values.get(FILE);
        String text = file == null ? empty.written() : file;
        if (text.isEmpty()) {
            return empty;
        }
        AnglesRead read = AnglesReader.readText(text, FILE);
        if (read instanceof AnglesRead.Faulty faulty) {
            List<String> faults = new ArrayList<>();
            for (Fault fault : faulty.faults()) {
                faults.add(
                        file == null
                                ? fault.message()
                                : "line " + fault.line() + ", column " + fault.column() + ": " + fault.message());
            }
            return new WheelsView(values, faults, null);
        }
        AngleJob job = ((AnglesRead.Sound) read).job();
        Turned turned = job.turned();
        String drawing = CarSvg.draw(job.title(), job.reading().angles(), turned);
        return new WheelsView(values, List.of(), new Answer(drawing, AnglesText.of(job, turned)));
    }

    /** The fields as a file; empty where none is filled. */
    private String written() {
        JsonWriter json = new JsonWriter(500);
        json.beginObject();
        boolean any = false;
        for (boolean front : new boolean[] {true, false}) {
            json.key(front ? "front" : "rear").beginObject();
            for (Place place : Place.values()) {
                if (place.isFront() == front) {
                    any |= wheel(json.key(place.isLeft() ? "left" : "right"), place);
                }
            }
            json.endObject();
        }
        for (String name : new String[] {RATIO, READ_AT}) {
            if (values.containsKey(name)) {
                json.key(name).value(value(name));
            }
        }
        return any ? json.endObject().toString() : "";
    }

    private boolean wheel(JsonWriter json, Place place) {
        boolean any = false;
        json.beginObject();
        for (Measure measure : measures(place)) {
            String value = value(field(place, measure)).strip();
            if (!value.isEmpty()) {
                any = true;
                json.key(measure.word()).value(isDegrees(measure, value) ? value + " deg" : value);
            }
        }
        json.endObject();
        return any;
    }

    /** A bare number is degrees, since nothing else can be meant; but for a toe, which is as often read in mm. */
    private static boolean isDegrees(Measure measure, String value) {
        return measure != Measure.TOE && value.matches("[+-]?[0-9]+([.,][0-9]+)?");
    }
}
