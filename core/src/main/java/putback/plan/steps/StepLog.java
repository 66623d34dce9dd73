package putback.plan.steps;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.plan.order.Move;
import putback.quantity.Minutes;
import putback.sheet.Height;
import putback.sheet.Setups;
import putback.sheet.Side;
import putback.sheet.Station;

/** Writes steps down one after the other and keeps what is set: height, station, side and tool. */
final class StepLog {
    private final Setups setups;
    private final List<Step> steps = new ArrayList<>();
    private final Set<String> warnings = new LinkedHashSet<>();
    private Phase phase = Phase.APART;
    private Height height = Height.ON_WHEELS;
    private @Nullable Station station;
    private Side side = Side.NONE;
    private String toolKey = "";

    StepLog(Setups setups) {
        this.setups = setups;
    }

    Height height() {
        return height;
    }

    void turnRound() {
        phase = Phase.TOGETHER;
    }

    void warn(String sentence) {
        warnings.add(sentence);
    }

    /** What changing over to a step at the present height would cost. */
    Minutes setup(@Nullable Station toStation, Side toSide, String toToolKey) {
        Minutes cost = Minutes.ZERO;
        if (toStation != null && station != null && toStation != station) {
            cost = cost.plus(setups.station());
        }
        if (toSide != Side.NONE && side != Side.NONE && toSide != side) {
            cost = cost.plus(setups.side());
        }
        if (!toToolKey.isEmpty() && !toolKey.isEmpty() && !toToolKey.equals(toolKey)) {
            cost = cost.plus(setups.tool());
        }
        return cost;
    }

    void add(Draft draft) {
        write(draft, setup(draft.station, draft.side, draft.toolKey));
    }

    /** The car is made to stand another way. */
    void stand(Height to, Draft draft) {
        height = to;
        write(draft, setups.height());
    }

    private void write(Draft draft, Minutes setup) {
        station = draft.station != null ? draft.station : station;
        side = draft.side != Side.NONE ? draft.side : side;
        toolKey = draft.toolKey.isEmpty() ? toolKey : draft.toolKey;
        steps.add(new Step(
                steps.size() + 1,
                phase,
                draft.act,
                draft.joint,
                draft.part,
                draft.with,
                draft.aid,
                draft.followUp,
                draft.fastener,
                draft.side,
                draft.station,
                height,
                draft.tool,
                draft.hold,
                draft.minutes,
                setup,
                draft.stages,
                List.of(),
                List.copyOf(new LinkedHashSet<>(draft.cautions)),
                draft.text));
    }

    /** Puts a step that changes nothing before all that is written down. */
    void beforeAll(Draft draft) {
        List<Step> later = List.copyOf(steps);
        steps.clear();
        Phase now = phase;
        Height stands = height;
        phase = Phase.APART;
        height = Height.ON_WHEELS;
        write(draft, Minutes.ZERO);
        phase = now;
        height = stands;
        for (Step step : later) {
            steps.add(step.withNumber(steps.size() + 1));
        }
    }

    RoundTrip finished(List<Move> moves) {
        return new RoundTrip(steps, moves, List.copyOf(warnings));
    }
}
