package putback.app.text;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.Station;

/**
 * Where the mechanic is at a step, for the small headings.
 *
 * @param station null where a step says nothing about it: he stays where he is
 */
public record Whereabouts(@Nullable Station station, Side side) {
    /** At a step. What is offered up is offered up where its first fixing is started, which comes after it. */
    public static Whereabouts of(List<Step> steps, int at) {
        Step step = steps.get(at);
        if (step.station() == null && step.act() == Act.OFFER_UP) {
            for (int i = at + 1; i < steps.size() && steps.get(i).act() != Act.HEIGHT; i++) {
                Step later = steps.get(i);
                if (later.act() == Act.START && isOfferedFor(step, later)) {
                    return new Whereabouts(later.station(), later.side());
                }
            }
        }
        return new Whereabouts(step.station(), step.side());
    }

    private static boolean isOfferedFor(Step offered, Step started) {
        if (started.joint() == null) {
            return false;
        }
        boolean joins = offered.part() != null
                && started.joint().joins().contains(offered.part().index());
        for (Part part : offered.with()) {
            joins |= started.joint().joins().contains(part.index());
        }
        return joins;
    }

    /** Written out, since it is compared on the way of every plan: see decision 2. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Whereabouts there && station == there.station && side == there.side;
    }

    @Override
    public int hashCode() {
        return Objects.hash(station, side);
    }

    /** Such as {@code wheel well, left}; nothing where the station is not known. */
    public String text() {
        if (station == null) {
            return "";
        }
        return station.word() + (side == Side.NONE ? "" : ", " + side.word());
    }
}
