package putback.app.learning;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Signature;

/** A ledger as it is written at a car, minute by minute from nine o'clock. */
final class Written {
    private static final Instant NINE = Instant.parse("2026-03-02T09:00:00Z");

    private final List<Event> events = new ArrayList<>();
    private String by = "Mara";
    private String device = "tab";

    Written by(String person, String on) {
        by = person;
        device = on;
        return this;
    }

    Written did(double minute, Did did, @Nullable String joint) {
        return add(minute, did, joint, null, null);
    }

    Written note(double minute, @Nullable String joint, String words) {
        return add(minute, Did.NOTE, joint, words, null);
    }

    Written wrong(double minute, int number) {
        return add(minute, Did.CORRECT, null, "ticked by mistake", "e-" + number);
    }

    private Written add(
            double minute, Did did, @Nullable String joint, @Nullable String words, @Nullable String corrects) {
        long seq = events.size() + 1L;
        Instant at = NINE.plusMillis(Math.round(minute * 60_000));
        events.add(new Event(
                new Signature("e-" + seq, at, by, device, seq),
                did,
                joint,
                null,
                List.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                words,
                corrects));
        return this;
    }

    int last() {
        return events.size();
    }

    List<Event> events() {
        return List.copyOf(events);
    }
}
