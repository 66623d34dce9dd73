package putback.app.web.wheels;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.linkage.Corner;
import putback.angles.linkage.Travel;
import putback.app.text.TravelText;
import putback.app.web.frame.Answer;
import putback.app.wheels.CornerSvg;
import putback.quantity.Length;
import putback.store.sheets.CornerRead;
import putback.store.sheets.CornerReader;
import putback.store.sheets.Fault;

/**
 * One corner as the page shows it, at a travel.
 *
 * @param file as it was typed
 * @param travelMm of the wheel centre
 * @param faults a line each; empty where all is well
 * @param answer null where something is wrong
 */
public record CornerView(
        String file,
        int travelMm,
        List<String> faults,
        @Nullable Answer answer) {
    public static final int MOST_MM = 100;
    private static final String NAME = "file";

    static final String EXAMPLE = """
            suspension: strut
            side: left
            points:
              arm-front: [250, 400, 200]
              arm-rear: [-250, 450, 200]
              ball-joint: [0, 900, 200]
              strut-top: [-40, 700, 850]
              strut-lower: [-14, 830, 427.5]
              rod-inner: [50, 200, 250]
              rod-outer: [150, 800, 275]
              wheel-centre: [-20, 950, 313.426]
            spin-axis: [0, 150, 5]
            tyre-radius: 313.6 mm
            """;

    /**
     * @param drawing front, side and plan, SVG
     * @param text where it points there, as the command prints it
     */
    public record Answer(String drawing, String text) {}

    public CornerView {
        faults = List.copyOf(faults);
    }

    static CornerView of(Map<String, String> typed) {
        String file = typed.getOrDefault(NAME, EXAMPLE);
        int travel = travel(typed.getOrDefault("travel", "0"));
        CornerRead read = CornerReader.readText(file, NAME);
        if (read instanceof CornerRead.Faulty faulty) {
            List<String> faults = new ArrayList<>();
            for (Fault fault : faulty.faults()) {
                faults.add("line " + fault.line() + ", column " + fault.column() + ": " + fault.message());
            }
            return new CornerView(file, travel, faults, null);
        }
        Corner corner = ((CornerRead.Sound) read).corner();
        Travel there = Travel.of(corner, new Length(0), new Travel.Span(travel, 1, 1));
        List<String> locks =
                there.locks().stream().map(lock -> lock.words() + ".").toList();
        return new CornerView(
                file, travel, locks, new Answer(CornerSvg.draw(corner, travel), TravelText.of(corner, there, null)));
    }

    private static int travel(String typed) {
        try {
            return Math.max(-MOST_MM, Math.min(MOST_MM, Integer.parseInt(typed.strip())));
        } catch (NumberFormatException none) {
            return 0;
        }
    }
}
