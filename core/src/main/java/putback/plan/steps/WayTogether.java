package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Joint;

/** Puts the car together again: few changes of height, then few of side, station and tool. */
final class WayTogether {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final Standing standing;
    private final TogetherScene scene;
    private final NextTask nextTask;
    private final OfferingUp offeringUp;
    private final Closing closing;
    private final Releasing releasing;
    private boolean setsMeasuredHeight;

    WayTogether(Job job, StepLog log, AidsOn aids, Charges charges, ApartScene apart) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.standing = new Standing(job);
        this.scene = new TogetherScene(job, apart);
        Cautions cautions = new Cautions(job);
        this.nextTask = new NextTask(job, log, scene);
        this.offeringUp = new OfferingUp(job, log, aids, scene, charges);
        this.closing = new Closing(job, log, aids, scene, charges, cautions, offeringUp);
        this.releasing = new Releasing(job, log, aids, scene, charges, cautions);
    }

    void run() {
        ClosingOrder order = new ClosingOrder(job, log);
        HeightPlan.Found found = heights(order);
        BitSet done = new BitSet();
        doAll(order.graph(), done);
        for (Height height : found.heights()) {
            stand(height);
            doAll(order.graph(), done);
        }
        doTheRest(order.graph(), done);
    }

    private HeightPlan.Found heights(ClosingOrder order) {
        HeightPlan.Found found = new HeightPlan(order.graph(), order.wheels(), true).from(log.height());
        while (!found.complete() && order.relent(found.done())) {
            found = new HeightPlan(order.graph(), order.wheels(), true).from(log.height());
        }
        if (!found.complete()) {
            log.warn("Weight comes on the wheels before " + Words.list(missing(order.graph(), found.done()))
                    + ": look at the heights in the sheet.");
            found = new HeightPlan(order.graph(), order.wheels(), false).from(log.height());
        }
        return found;
    }

    private static List<String> missing(TaskGraph graph, BitSet done) {
        List<String> names = new ArrayList<>();
        for (int i = done.nextClearBit(0); i < graph.size(); i = done.nextClearBit(i + 1)) {
            Joint joint = graph.task(i).joint();
            if (joint != null && graph.task(i).kind() == Task.Kind.START) {
                names.add(Words.of(joint) + " is started");
            }
        }
        return names.isEmpty() ? List.of("all is closed") : names;
    }

    /** Only where a sheet contradicts itself beyond help: the way apart backwards. */
    private void doTheRest(TaskGraph graph, BitSet done) {
        if (done.cardinality() == graph.size()) {
            return;
        }
        List<Integer> rest = new ArrayList<>();
        for (int i = done.nextClearBit(0); i < graph.size(); i = done.nextClearBit(i + 1)) {
            rest.add(i);
        }
        // the sort is stable: equals stay in the order of their numbers
        rest.sort((a, b) -> Integer.compare(nextTask.position(graph.task(b)), nextTask.position(graph.task(a))));
        for (int i : rest) {
            Task task = graph.task(i);
            if (task.height() != Height.ANY && task.height() != log.height()) {
                stand(task.height());
            }
            perform(task);
        }
        if (log.height() != Height.ON_WHEELS) {
            stand(Height.ON_WHEELS);
        }
    }

    private void doAll(TaskGraph graph, BitSet done) {
        int next = nextTask.of(graph, done);
        while (next >= 0) {
            perform(graph.task(next));
            done.set(next);
            next = nextTask.of(graph, done);
        }
    }

    private void stand(Height height) {
        if (height == Height.ON_WHEELS) {
            for (AidsOn.On aid : aids.all()) {
                log.warn("The " + aid.name + " at " + Words.the(aid.part) + " is still on when the weight comes on.");
            }
        }
        boolean wheelOff = job.wheelIsOff(scene.ties());
        setsMeasuredHeight |= Standing.setsMeasuredHeight(height, wheelOff);
        log.stand(height, standing.step(log.height(), height, wheelOff));
    }

    /** Whether a height was set that is measured before the car is raised. */
    boolean setsMeasuredHeight() {
        return setsMeasuredHeight;
    }

    private void perform(Task task) {
        Joint joint = task.joint();
        FollowUp followUp = task.followUp();
        if (joint != null) {
            closing.close(task.kind(), joint);
        } else if (followUp != null) {
            log.add(Draft.of(Act.FOLLOW_UP, followUp.name() + ".")
                    .followUp(followUp)
                    .minutes(followUp.minutes()));
        } else if (task.part() >= 0) {
            offeringUp.bringBack(job.part(task.part()));
        }
        releasing.whatIsDone();
    }
}
