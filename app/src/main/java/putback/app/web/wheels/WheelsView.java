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
import putback.app.text.AnglesReport;
import putback.app.wheels.CarSvg;
import putback.app.wheels.DrawnFor;
import putback.store.sheets.AnglesRead;
import putback.store.sheets.AnglesReader;
import putback.store.sheets.Fault;

/**
 * Wheel angles as the page shows them: readings, ranges and adjusters typed into fields, or a whole file.
 *
 * @param values what was typed, by name
 * @param wrong what is wrong, each with the field it is about
 * @param job what was understood; null where nothing is asked yet, or something is wrong
 * @param answer null likewise
 */
public record WheelsView(
        Map<String, String> values,
        List<Wrong> wrong,
        @Nullable AngleJob job,
        @Nullable Answer answer) {
    private static final String FILE = "file";

    /**
     * @param wide the car from above, SVG
     * @param narrow the same for a telephone
     */
    public record Answer(String wide, String narrow, AnglesReport report) {}

    public WheelsView {
        wrong = List.copyOf(wrong);
    }

    /** The value that was typed; empty where there is none. */
    public String value(String name) {
        return values.getOrDefault(name, "");
    }

    /** What is wrong with a field; empty where nothing is. */
    public String wrong(String name) {
        return Wrong.at(wrong, name);
    }

    /** Whether a field whose name begins so was filled, so that what is folded is shown. */
    public boolean isTyped(String start) {
        return values.keySet().stream().anyMatch(name -> name.startsWith(start));
    }

    /** Whether a sweep was typed. */
    public boolean isSwept() {
        return values.keySet().stream().anyMatch(name -> name.contains(".sweep."));
    }

    public List<Place> places() {
        return List.of(Place.values());
    }

    /** What a wheel's fields ask for. */
    public List<Measure> measures(Place place) {
        return AngleFields.measures(place);
    }

    /** Name of a field, such as {@code front.left.camber}. */
    public String field(Place place, Measure measure) {
        return place.word() + "." + measure.word();
    }

    /** What ranges may be wanted of, by name. */
    public List<String> ranges() {
        return AngleFields.RANGES;
    }

    public List<String> units() {
        return AngleFields.UNITS;
    }

    /** What can be turned at a wheel. */
    public List<Measure> turned() {
        return List.of(Measure.TOE, Measure.CAMBER);
    }

    static WheelsView of(Map<String, String> typed) {
        Map<String, String> values = new LinkedHashMap<>();
        typed.forEach((name, value) -> {
            if (!value.isBlank()) {
                values.put(name, value);
            }
        });
        String file = values.get(FILE);
        TypedFile written = file == null ? AngleFields.written(values) : new TypedFile();
        String text = file == null ? written.toString() : file;
        if (text.isEmpty()) {
            return new WheelsView(values, List.of(), null, null);
        }
        AnglesRead read = AnglesReader.readText(text, FILE);
        if (read instanceof AnglesRead.Faulty faulty) {
            List<Wrong> wrong = new ArrayList<>();
            for (Fault fault : faulty.faults()) {
                wrong.add(file == null ? Wrong.atField(fault, written) : Wrong.inFile(fault, FILE));
            }
            return new WheelsView(values, wrong, null, null);
        }
        AngleJob job = ((AnglesRead.Sound) read).job();
        return new WheelsView(values, List.of(), job, answer(job, job.turned()));
    }

    private static Answer answer(AngleJob job, Turned turned) {
        return new Answer(
                CarSvg.draw(job.title(), job.reading().angles(), turned, DrawnFor.SCREEN),
                CarSvg.draw(job.title(), job.reading().angles(), turned, DrawnFor.PHONE),
                AnglesReport.of(job, turned));
    }
}
