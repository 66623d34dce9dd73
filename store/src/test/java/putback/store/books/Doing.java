package putback.store.books;

import java.time.Instant;
import java.util.List;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Signature;

/** Events as a device would write them. */
final class Doing {
    private Doing() {}

    static Event of(String device, long seq, Did did, String joint) {
        return at(Instant.parse("2026-03-02T09:00:00Z").plusSeconds(seq), device, seq, did, joint);
    }

    static Event at(Instant at, String device, long seq, Did did, String joint) {
        Signature signature = new Signature(device + "-" + seq, at, "Mara", device, seq);
        Double torque = did == Did.TIGHTEN ? 98.5 : null;
        return new Event(
                signature, did, joint, null, List.of(), null, null, null, torque, null, null, null, null, null);
    }

    static Event note(String device, long seq, String reason) {
        Signature signature =
                new Signature(device + "-" + seq, Instant.parse("2026-03-02T09:00:00Z"), "Zoë \"M\"", device, seq);
        return new Event(
                signature,
                Did.NOTE,
                "left.strut",
                null,
                List.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                reason,
                null);
    }
}
