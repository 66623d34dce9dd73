package putback.ledger;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/** An event written in a test. */
public final class AnEvent {
    private final Did did;
    private Signature signature = Signature.NONE;
    private @Nullable String joint;
    private @Nullable String part;
    private List<String> with = List.of();
    private @Nullable String aid;
    private @Nullable String followUp;
    private @Nullable Height height;
    private @Nullable Double torqueNm;
    private @Nullable Double angleDeg;
    private @Nullable String wrench;
    private @Nullable String reason;
    private @Nullable String corrects;

    private AnEvent(Did did) {
        this.did = did;
    }

    public static AnEvent of(Did did) {
        return new AnEvent(did);
    }

    /** What is done when a step is done as planned. */
    public static AnEvent of(PlanStep step) {
        AnEvent event = new AnEvent(step.did());
        event.joint = step.joint();
        event.part = step.part();
        event.with = step.with();
        event.aid = step.aid();
        event.followUp = step.followUp();
        event.height = step.height();
        event.torqueNm = step.tight() == null ? null : step.tight().torqueNm();
        event.angleDeg = step.tight() == null ? null : step.tight().angleDeg();
        return event;
    }

    public AnEvent at(String id) {
        joint = id;
        return this;
    }

    public AnEvent part(String id) {
        part = id;
        return this;
    }

    public AnEvent wrench(String id) {
        wrench = id;
        return this;
    }

    public AnEvent reason(String why) {
        reason = why;
        return this;
    }

    public AnEvent corrects(String id) {
        corrects = id;
        return this;
    }

    public AnEvent torque(double newtonMetres) {
        torqueNm = newtonMetres;
        return this;
    }

    public AnEvent id(String id) {
        signature = new Signature(id, signature.at(), signature.by(), signature.device(), signature.seq());
        return this;
    }

    public AnEvent by(String by, @Nullable Instant at) {
        signature = new Signature(signature.id(), at, by, signature.device(), signature.seq());
        return this;
    }

    public AnEvent device(String device, long seq) {
        signature = new Signature(signature.id(), signature.at(), signature.by(), device, seq);
        return this;
    }

    public Event event() {
        return new Event(
                signature, did, joint, part, with, aid, followUp, height, torqueNm, angleDeg, wrench, null, reason,
                corrects);
    }
}
