package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.seized.Attempt;
import putback.labour.seized.Refusal;
import putback.labour.seized.Row;
import putback.labour.seized.Seized;
import putback.labour.seized.Surroundings;
import putback.plan.Plan;
import putback.plan.steps.Renewal;
import putback.quantity.Parsed;
import putback.sheet.Joint;

/** What to try on a joint of a plan that will not move, once somebody has seen which way it refuses. */
public final class WontMove {
    private final Plan plan;
    private final JointResorts resorts;
    private final BigDecimal ratePerHour;

    /**
     * @param ratePerHour price of an hour's work, more than 0
     */
    public WontMove(Plan plan, OwnFigures own, BigDecimal ratePerHour) {
        this.plan = plan;
        this.ratePerHour = ratePerHour;
        resorts = new JointResorts(
                plan.assembly().sheet().resorts(), own, Renewal.of(plan.assembly(), plan.wanted(), plan.selection()));
    }

    /**
     * In the order that costs least.
     *
     * @param refusal which way it refuses; null where nobody says
     */
    public Parsed<Row> of(Joint joint, @Nullable Refusal refusal) {
        Parsed<List<Attempt>> attempts = resorts.of(joint);
        if (!(attempts instanceof Parsed.Value<List<Attempt>> some)) {
            return new Parsed.Refused<>(attempts.refusal());
        }
        return new Seized(ratePerHour, new ArrayList<>(some.value()), refusal, Surroundings.of(plan.assembly(), joint))
                .answer();
    }
}
