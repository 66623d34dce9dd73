package putback.plan.steps;

import java.util.BitSet;
import java.util.List;
import putback.plan.access.Ties;
import putback.plan.order.Move;
import putback.sheet.Joint;

/** Takes the car apart, one move after the other. */
final class WayApart {
    private final Job job;
    private final StepLog log;
    private final Cautions cautions;
    private final Preparing preparing;
    private final Footing footing;
    private final ApartScene scene;
    private final BreakingLoose breakingLoose;
    private final Securing securing;
    private final TakingOff takingOff;
    private final TyingUp tyingUp;
    private final BareSprings bareSprings;
    private final Scrapped scrapped;
    private final UnderJack underJack;

    WayApart(Job job, StepLog log, AidsOn aids, Charges charges) {
        this.job = job;
        this.log = log;
        this.cautions = new Cautions(job);
        this.preparing = new Preparing(log, cautions);
        this.footing = new Footing(job, log);
        this.scene = new ApartScene(job);
        this.breakingLoose = new BreakingLoose(job, log, scene, footing, preparing);
        this.bareSprings = new BareSprings(job, log, aids, scene);
        this.securing = new Securing(job, log, aids, scene, cautions, bareSprings);
        this.takingOff = new TakingOff(job, log, aids, scene, charges);
        this.tyingUp = new TyingUp(job, log, aids, scene, charges, cautions);
        this.scrapped = Scrapped.of(job);
        this.underJack = new UnderJack(job);
    }

    ApartScene scene() {
        return scene;
    }

    void run() {
        breakingLoose.reachedOnWheels();
        for (int i = 0; i < job.moves.size(); i++) {
            if (i == job.early) {
                breakingLoose.restOnWheels();
            }
            Move move = job.moves.get(i);
            if (move instanceof Move.Open one) {
                undo(job.joint(one.joint()), tyingUp.movedAsideNext(i + 1));
                tyingUp.asidesThatMovesForget();
            } else if (move instanceof Move.MoveAside one) {
                tyingUp.moveAside(job.part(one.part()));
            }
            if (i < job.early) {
                breakingLoose.reachedOnWheels();
            }
        }
    }

    private void undo(Joint joint, BitSet asideNext) {
        breakingLoose.onWheelsAtLast(joint);
        breakingLoose.heldBy(joint);
        footing.stand(Job.heightOf(joint), scene.wheelIsOff());
        if (scrapped.staysTogether(joint)) {
            leave(joint);
            return;
        }
        preparing.beforeOpening(joint);
        preparing.mark(joint);
        securing.before(joint, asideNext);
        String inOnePiece = scrapped.couldStay(joint) ? UndoText.inOnePiece(job.parts(joint.joins())) : "";
        log.add(Draft.at(Act.UNDO, joint, UndoText.of(joint) + inOnePiece)
                .turning(joint, joint.fastener())
                .minutes(Charges.undo(joint, scene.loosened.get(joint.index())))
                .caution(Cautions.leftHand(joint))
                .caution(cautions.undo(joint, scene.open))
                .caution(underJack.at(joint, scene.ties(), scene.lowerings))
                .caution(bareSprings.before(joint)));
        Ties before = scene.ties();
        scene.open(joint.index());
        look(joint);
        securing.after(joint, before);
        takingOff.after(joint, before);
        tyingUp.after(joint, asideNext);
        bareSprings.after(joint);
    }

    private void look(Joint joint) {
        List<String> items = joint.entry().wording().look();
        if (!items.isEmpty()) {
            log.add(Draft.at(Act.LOOK, joint, "While it is in sight, look at " + Words.list(items) + "."));
        }
    }

    /** A joint between two old parts that go to scrap: nobody parts them. */
    private void leave(Joint joint) {
        preparing.mark(joint);
        log.add(Draft.at(Act.UNDO, joint, UndoText.scrapped(joint, job.parts(joint.joins())))
                .minutes(Charges.undo(joint, false)));
        scene.open(joint.index());
    }
}
