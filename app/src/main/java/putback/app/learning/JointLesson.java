package putback.app.learning;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.price.Observed;
import putback.labour.seized.RustGrade;
import putback.labour.seized.RustGrades;
import putback.ledger.Did;
import putback.sheet.Joint;

/** What a job teaches of one joint: the first time it was opened, and how it was closed after that. */
final class JointLesson {
    private final Joint joint;
    private final List<Hand.Work> opening = new ArrayList<>();
    private final List<Hand.Work> closing = new ArrayList<>();
    private boolean opened;
    private boolean closed;
    private boolean again;
    private int jams;

    JointLesson(Joint joint) {
        this.joint = joint;
    }

    /** One more of its fasteners would not move at first. */
    void jammed() {
        jams++;
    }

    void add(Did did, Hand.Work work) {
        switch (did) {
            case BREAK_LOOSE, UNDO -> open(did, work);
            case START, RUN_DOWN, TIGHTEN -> close(did, work);
            default -> {}
        }
    }

    private void open(Did did, Hand.Work work) {
        if (!opened) {
            opening.add(work);
            opened = did == Did.UNDO;
        } else {
            again |= !closed;
        }
    }

    private void close(Did did, Hand.Work work) {
        if (opened && !closed) {
            closing.add(work);
            closed = did == Did.TIGHTEN || !joint.entry().kind().threaded();
        }
    }

    void teach(List<Observed> all, @Nullable RustGrades rust) {
        if (opened) {
            took(all, true, opening);
        }
        boolean looked = opened && !opening.get(opening.size() - 1).together();
        if (rust != null && (looked || jams > 0) && RustGrade.canSeize(joint)) {
            int of = joint.fastener().count();
            all.add(new Observed.Rusted(joint.entry().id(), rust.at(joint), Math.min(jams, of), of));
        }
        if (closed && !again) {
            took(all, false, closing);
        }
    }

    private void took(List<Observed> all, boolean isOpening, List<Hand.Work> works) {
        Span sum = new Span();
        for (Hand.Work work : works) {
            sum.add(work.span());
        }
        if (sum.minutes() > 0) {
            all.add(new Observed.Took(joint.entry().id(), isOpening, sum.minutes()));
        }
    }
}
