package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Numbers;
import putback.plan.access.Ties;
import putback.sheet.Fastener;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Letting;
import putback.sheet.Part;
import putback.sheet.SeatedSpring;

/** Closes one joint, stage by stage. */
final class Closing {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final TogetherScene scene;
    private final Charges charges;
    private final Cautions cautions;
    private final OfferingUp offeringUp;
    private final UnderJack underJack;

    Closing(
            Job job,
            StepLog log,
            AidsOn aids,
            TogetherScene scene,
            Charges charges,
            Cautions cautions,
            OfferingUp offeringUp) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.scene = scene;
        this.charges = charges;
        this.cautions = cautions;
        this.offeringUp = offeringUp;
        this.underJack = new UnderJack(job);
    }

    void close(Task.Kind kind, Joint joint) {
        Fastener back = job.back(joint);
        switch (kind) {
            case START -> start(joint, back);
            case RUN_DOWN -> runDown(joint, back);
            case TIGHTEN -> tighten(joint, back);
            default -> secondLook(joint, back);
        }
    }

    private void start(Joint joint, Fastener back) {
        List<String> cleaning = joint.entry().wording().beforeClosing();
        if (!cleaning.isEmpty()) {
            log.add(Draft.at(
                    Act.CLEAN, joint, "Before closing " + Words.of(joint) + ": " + String.join("; ", cleaning) + "."));
        }
        offeringUp.before(joint);
        for (Letting letting : joint.letsGo()) {
            prepareAid(joint, letting);
        }
        List<String> under = underJack.at(joint, scene.ties(), scene.lowerings);
        scene.start(joint);
        Draft draft = Draft.at(Act.START, joint, UndoText.start(joint, back))
                .minutes(charges.start(joint))
                .caution(cautions.start(joint, back))
                .caution(under)
                .caution(dangling(joint));
        log.add(
                job.threaded(joint)
                        ? draft.byHand(back).caution(Cautions.leftHandBack(back))
                        : draft.turning(joint, back));
    }

    /** What has just been joined to a flexible part and to nothing else yet. */
    private List<String> dangling(Joint joint) {
        Ties ties = scene.ties();
        List<String> lines = new ArrayList<>();
        for (int index : joint.joins()) {
            boolean held = aids.holding(pieceOf(index, ties)) != null;
            if (ties.hung(index) && !job.network.isTether(index) && !held && !job.hangsAlways(index)) {
                lines.add(
                        "Hold up " + Words.the(job.part(index)) + " until it is bolted: only flexible parts carry it.");
                lines.addAll(cautions.tethers(List.of(job.part(index)), scene.open));
            }
        }
        return lines;
    }

    private BitSet pieceOf(int part, Ties ties) {
        BitSet piece = new BitSet();
        for (int other = 1; other < job.network.parts(); other++) {
            piece.set(other, ties.heldTogether(part, other));
        }
        return piece;
    }

    private void prepareAid(Joint joint, Letting letting) {
        Part part = job.part(letting.part());
        if (letting.letDown() && scene.lowerings.raise(part.index(), joint.index())) {
            log.add(Draft.with(
                            Act.JACK_UP,
                            part,
                            "Raise " + Words.the(part) + " on its " + letting.aid() + ", ready for " + Words.of(joint)
                                    + ".")
                    .aid(letting.aid())
                    .caution(loadingSpring(part.index())));
        }
        boolean newSpring = Job.isCompressor(letting) && job.renewal.renews(part.index());
        if (newSpring && aids.find(part.index(), letting.aid()) == null) {
            log.add(Draft.with(Act.SUPPORT, part, AidText.onNew(part, letting.aid(), joint))
                    .aid(letting.aid())
                    .caution(cautions.support(part, letting.aid(), scene.open)));
            AidsOn.On on = aids.putOn(part, letting.aid());
            for (int other : Numbers.in(job.opened)) {
                if (asksFor(job.joint(other), part, letting.aid())) {
                    on.askers.set(other);
                }
            }
        }
    }

    /** What is said as a part goes up against a spring. */
    private List<String> loadingSpring(int part) {
        Ties ties = scene.ties();
        for (SeatedSpring spring : job.springs) {
            boolean seated = !Numbers.anyIn(spring.seats(), scene.open);
            for (int end : spring.ends()) {
                if (seated && (end == part || end != 0 && ties.heldTogether(end, part))) {
                    return List.of(Cautions.TAKES_LOAD);
                }
            }
        }
        return List.of();
    }

    private static boolean asksFor(Joint joint, Part part, String aid) {
        for (Letting asked : joint.letsGo()) {
            if (asked.part() == part.index() && asked.aid().equals(aid)) {
                return true;
            }
        }
        return false;
    }

    private void runDown(Joint joint, Fastener back) {
        String later = job.tightenedLater(joint)
                ? Words.they(back, "; it is", "; they are") + " tightened " + later(joint) + "."
                : ", no tighter yet.";
        String touches = job.holdsWheel(joint)
                ? " crosswise until the wheel sits square and snug"
                : Words.they(back, " until it touches", " until they touch");
        log.add(Draft.at(Act.RUN_DOWN, joint, "Run down " + Words.of(joint) + touches + later)
                .turning(joint, back)
                .minutes(Charges.runDown(joint)));
        scene.runDown(joint);
    }

    private String later(Joint joint) {
        FollowUp first = job.followUpBefore(joint);
        if (first != null) {
            return "after this: " + Words.low(first.name());
        }
        return job.tightenHeight(joint) == Height.RIDE_HEIGHT ? "at ride height" : "on wheels";
    }

    private void tighten(Joint joint, Fastener back) {
        String mark = joint.fastener().critical() ? Words.they(back, " Paint-mark it.", " Paint-mark them.") : "";
        log.add(Draft.at(Act.TIGHTEN, joint, "Tighten " + Words.of(joint) + ": " + Words.tightness(back) + "." + mark)
                .turning(joint, back)
                .minutes(charges.tighten(joint))
                .stages(Stages.of(back))
                .caution(Cautions.leftHandBack(back))
                .caution(cautions.tighten(joint, back)));
        scene.tighten(joint);
    }

    private void secondLook(Joint joint, Fastener back) {
        Draft draft = Draft.at(
                Act.SECOND_LOOK,
                joint,
                "Second look at " + Words.of(joint) + ": by another person, or ten minutes later with fresh light.");
        draft.fastener = back;
        log.add(draft);
        scene.seen.set(joint.index());
    }
}
