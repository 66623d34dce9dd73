package putback.plan.steps;

import java.util.List;
import putback.plan.access.Network;
import putback.plan.order.Move;
import putback.plan.selection.Selection;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;

/** Writes the whole round trip: apart as the moves say, then together again in a sound order. */
public final class StepBuilder {
    private StepBuilder() {}

    /**
     * The steps from the wheels on the ground and back to it, without their reasons.
     *
     * @param moves the way apart in a sound order: each joint of the selection once, and the asides that are used
     */
    public static RoundTrip build(Assembly assembly, Wanted wanted, Selection selection, List<Move> moves) {
        Network network = Network.of(assembly);
        OnWheelsFirst order = OnWheelsFirst.of(assembly, network, selection, moves);
        Job job = new Job(assembly, network, wanted, selection, order);
        StepLog log = new StepLog(assembly.sheet().setups());
        AidsOn aids = new AidsOn();
        Charges charges = new Charges(job);
        WayApart apart = new WayApart(job, log, aids, charges);
        apart.run();
        new Turn(job, log, aids).run();
        WayTogether together = new WayTogether(job, log, aids, charges, apart.scene());
        together.run();
        new LastChecks(job, log).run(charges.owed(apart.scene().movedAside));
        if (together.setsMeasuredHeight()) {
            log.beforeAll(Standing.measure());
        }
        return log.finished(job.moves);
    }
}
