package putback.plan.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import putback.plan.access.Network;
import putback.quantity.Minutes;
import putback.sheet.Part;
import putback.sheet.Tether;
import putback.sheet.TetherKind;

/** What is looked at when all is closed. */
final class LastChecks {
    private static final Set<TetherKind> LINES = Set.of(TetherKind.HOSE, TetherKind.WIRE, TetherKind.CABLE);

    private final Job job;
    private final StepLog log;

    LastChecks(Job job, StepLog log) {
        this.job = job;
        this.log = log;
    }

    /**
     * @param owed handling that no step could carry
     */
    void run(Minutes owed) {
        List<Part> lines = touchedLines();
        if (!lines.isEmpty()) {
            log.add(Draft.of(
                            Act.CHECK,
                            "Look over, " + Steering.of(job.assembly).swung() + ": "
                                    + Words.the(lines)
                                    + (lines.size() == 1 ? " is" : " are")
                                    + " clipped, untwisted and free of wheel and arm.")
                    .caution(List.of("A line that rubs fails on the road, not in the shop.")));
        }
        new BrakeChecks(job, log).run();
        log.add(Draft.of(Act.CHECK, "All aids off, tools and locking-nut key counted, nothing left on the car.")
                .minutes(owed));
    }

    /** Hoses, wires and cables that were opened, or whose neighbour was moved. */
    private List<Part> touchedLines() {
        List<Part> lines = new ArrayList<>();
        for (Part part : job.assembly.parts()) {
            if (isTouchedLine(part)) {
                lines.add(part);
            }
        }
        return lines;
    }

    private boolean isTouchedLine(Part part) {
        Tether tether = part.entry().tether();
        return tether != null && LINES.contains(tether.kind()) && isTouched(part.index());
    }

    private boolean isTouched(int tether) {
        Network network = job.network;
        for (int joint : network.jointsOf(tether)) {
            if (job.opened.get(joint)) {
                return true;
            }
            for (int part : network.joins(joint)) {
                if (part != 0 && (job.off.get(part) || job.hung.get(part))) {
                    return true;
                }
            }
        }
        return false;
    }
}
