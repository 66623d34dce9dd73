package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Joint;

/**
 * When follow-ups are done.
 *
 * <p>They wait for all that is closed; those done with the car raised wait for the joints that bring them, and the wheels
 * that cover those joints wait for them. A joint that is to be tightened after a follow-up waits for it, and so does what
 * waits for that joint.
 */
final class FollowUpOrder {
    private final Job job;
    private final ClosingOrder closing;
    private final TaskGraph graph;
    private final StepLog log;
    private final Map<String, Integer> due = new LinkedHashMap<>();

    FollowUpOrder(Job job, ClosingOrder closing, StepLog log) {
        this.log = log;
        this.job = job;
        this.closing = closing;
        this.graph = closing.graph();
    }

    void add() {
        int closingTasks = graph.size();
        for (FollowUp followUp : job.selection.followUps()) {
            due.put(followUp.id(), graph.add(Task.followUp(followUp, followUp.height())));
        }
        for (FollowUp followUp : job.selection.followUps()) {
            waitForJoints(followUp, closingTasks);
        }
        for (FollowUp followUp : job.selection.followUps()) {
            for (String earlier : followUp.follows()) {
                if (due.containsKey(earlier)) {
                    orderIfSound(task(earlier), task(followUp.id()));
                }
            }
        }
        for (FollowUp followUp : job.selection.followUps()) {
            beforeTightening(followUp);
            beforeWheels(followUp);
        }
    }

    private int task(String followUp) {
        Integer task = due.get(followUp);
        if (task == null) {
            throw new IllegalStateException("no task for " + followUp);
        }
        return task;
    }

    private void orderIfSound(int first, int then) {
        if (!graph.ancestors(first).get(then)) {
            graph.order(first, then);
        }
    }

    private void waitForJoints(FollowUp followUp, int closingTasks) {
        BitSet late = late(thoseAfter(followUp));
        for (int other = 0; other < closingTasks; other++) {
            boolean free = !graph.ancestors(other).intersects(late);
            if (brings(other, followUp) || followUp.height() != Height.RAISED && free) {
                graph.order(other, task(followUp.id()));
            }
        }
    }

    /** The follow-up, and all that come after it. */
    private List<String> thoseAfter(FollowUp followUp) {
        List<String> after = new ArrayList<>(List.of(followUp.id()));
        for (int i = 0; i < after.size(); i++) {
            for (FollowUp other : job.selection.followUps()) {
                if (other.follows().contains(after.get(i)) && !after.contains(other.id())) {
                    after.add(other.id());
                }
            }
        }
        return after;
    }

    /** Tightenings that wait for one of these follow-ups. */
    private BitSet late(List<String> followUps) {
        BitSet late = new BitSet();
        for (int joint = job.opened.nextSetBit(0); joint >= 0; joint = job.opened.nextSetBit(joint + 1)) {
            for (String id : job.joint(joint).entry().timing().tightenAfter()) {
                if (followUps.contains(id) && closing.tighten(joint) >= 0) {
                    late.set(closing.tighten(joint));
                }
            }
        }
        return late;
    }

    private void beforeTightening(FollowUp followUp) {
        BitSet late = late(List.of(followUp.id()));
        for (int then = late.nextSetBit(0); then >= 0; then = late.nextSetBit(then + 1)) {
            Joint joint = graph.task(then).joint();
            if (joint != null && graph.ancestors(task(followUp.id())).get(then)) {
                log.warn(joint.name() + " is to be tightened after this: " + Words.low(followUp.name())
                        + "; but that waits for it: look at the sheet.");
            }
            orderIfSound(task(followUp.id()), then);
        }
    }

    /** Whether the task secures a joint that brings the follow-up. */
    private boolean brings(int task, FollowUp followUp) {
        Joint joint = graph.task(task).joint();
        return joint != null
                && joint.entry().brings().contains(followUp.id())
                && task == closing.secured(joint.index());
    }

    /** What is done raised is done while the joints that bring it are in sight. */
    private void beforeWheels(FollowUp followUp) {
        if (followUp.height() != Height.RAISED) {
            return;
        }
        for (int joint = job.opened.nextSetBit(0); joint >= 0; joint = job.opened.nextSetBit(joint + 1)) {
            if (job.joint(joint).entry().brings().contains(followUp.id())) {
                for (int wheel : wheelsBefore(job.joint(joint))) {
                    orderIfSound(task(followUp.id()), wheel);
                }
            }
        }
    }

    /** Tasks that put on the wheels that are in the way of a joint. */
    private Set<Integer> wheelsBefore(Joint joint) {
        Set<Integer> tasks = new LinkedHashSet<>();
        for (List<Integer> clause : joint.behind()) {
            for (int part : clause) {
                for (int other : job.network.jointsOf(part)) {
                    if (Job.isWheel(job.part(part)) && job.holdsWheel(job.joint(other)) && closing.start(other) >= 0) {
                        tasks.add(closing.start(other));
                    }
                }
            }
        }
        return tasks;
    }
}
