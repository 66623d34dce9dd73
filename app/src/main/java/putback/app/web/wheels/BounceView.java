package putback.app.web.wheels;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.angles.bounce.Bounce;
import putback.angles.bounce.Decay;
import putback.app.text.BounceReport;
import putback.quantity.Parsed;
import putback.store.sheets.Fault;
import putback.store.sheets.TraceRead;
import putback.store.sheets.TraceReader;

/**
 * Recorded bounces as the page shows them.
 *
 * @param inTime whether the second record is the same corner after work, and not the other side
 * @param faults a line each, the first ones of a file
 * @param report null where nothing was sent, or something is wrong
 */
public record BounceView(
        boolean inTime, List<String> faults, @Nullable BounceReport report) {
    private static final int MOST_FAULTS = 10;
    static final BounceView EMPTY = new BounceView(false, List.of(), null);

    public BounceView {
        faults = List.copyOf(faults);
    }

    /**
     * A record that was sent.
     *
     * @param name of its file
     */
    record Sent(String name, byte[] bytes) {}

    /**
     * @param sent one, or the left and the right one, or before and after
     */
    static BounceView of(List<Sent> sent, boolean inTime) {
        if (sent.isEmpty()) {
            return new BounceView(inTime, List.of("No record came with that. Choose a CSV file first."), null);
        }
        List<String> faults = new ArrayList<>();
        List<Decay> decays = new ArrayList<>();
        for (Sent one : sent) {
            read(one, decays, faults);
        }
        if (!faults.isEmpty()) {
            return new BounceView(inTime, faults, null);
        }
        List<String> names = sent.size() == 1
                ? List.of("the corner")
                : inTime ? List.of("before", "after") : List.of("left", "right");
        return new BounceView(inTime, faults, BounceReport.of(decays, names, inTime));
    }

    private static void read(Sent sent, List<Decay> decays, List<String> faults) {
        TraceRead read = TraceReader.read(sent.bytes(), sent.name());
        if (read instanceof TraceRead.Faulty faulty) {
            List<Fault> all = faulty.faults();
            all.stream().limit(MOST_FAULTS).map(Fault::toString).forEach(faults::add);
            if (all.size() > MOST_FAULTS) {
                faults.add(sent.name() + ": and " + (all.size() - MOST_FAULTS)
                        + " more like these. Is it the right file? A record has rows of time and height.");
            }
            return;
        }
        Parsed<Decay> decay = Bounce.of(((TraceRead.Sound) read).trace());
        if (decay instanceof Parsed.Value<Decay> one) {
            decays.add(one.value());
        } else {
            faults.add(TraceReader.fault(sent.name(), decay.refusal()).toString());
        }
    }
}
