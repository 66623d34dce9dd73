package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.labour.seized.Attempt;
import putback.labour.seized.Refusal;
import putback.labour.seized.UsualHazards;
import putback.labour.seized.UsualResorts;
import putback.plan.steps.Renewal;
import putback.quantity.Parsed;
import putback.sheet.Joint;
import putback.sheet.JointKind;
import putback.sheet.Resort;

/** Which resorts a joint has: those it names, else the usual ones with what the sheet adds or puts in their place. */
final class JointResorts {
    private final Renewal renewal;
    private final Map<String, Attempt> known = new LinkedHashMap<>();

    JointResorts(List<Resort> ofSheet, OwnFigures own, Renewal renewal) {
        this.renewal = renewal;
        for (Attempt one : assumed(ofSheet).values()) {
            known.put(one.id(), own.tried(one));
        }
    }

    /** The usual ones with what a sheet adds or puts in their place, by id. */
    static Map<String, Attempt> assumed(List<Resort> ofSheet) {
        Map<String, Attempt> assumed = new LinkedHashMap<>();
        for (Attempt one : UsualResorts.of(Assumed.FASTENER_PRICE)) {
            assumed.put(one.id(), one);
        }
        for (Resort one : ofSheet) {
            assumed.put(one.id(), attempt(one));
        }
        return assumed;
    }

    private static Attempt attempt(Resort resort) {
        List<Refusal> when = new ArrayList<>();
        for (Refusal refusal : Refusal.values()) {
            if (resort.when().contains(refusal.word())
                    || resort.when().contains(refusal.word().replace(' ', '-'))) {
                when.add(refusal);
            }
        }
        return new Attempt(
                resort.id(),
                resort.minutes(),
                BigDecimal.valueOf(resort.chance()),
                BigDecimal.valueOf(resort.breakChance()),
                orNothing(resort.breakPrice()),
                orNothing(resort.scraps()),
                when,
                UsualHazards.of(resort.id()));
    }

    private static BigDecimal orNothing(@Nullable BigDecimal price) {
        return price == null ? BigDecimal.ZERO : price;
    }

    /** What may be tried on one fastener of a joint; or which of its names is none. */
    Parsed<List<Attempt>> of(Joint joint) {
        boolean free = costsNothing(joint);
        List<Attempt> attempts = new ArrayList<>();
        List<String> names = joint.entry().resorts();
        for (String name : names.isEmpty() ? List.copyOf(known.keySet()) : names) {
            Attempt attempt = known.get(name);
            if (attempt == null) {
                return new Parsed.Refused<>("joint " + joint.id() + " names the resort " + name
                        + ", which is neither a usual one nor described in the sheet; there are: "
                        + String.join(", ", known.keySet()));
            }
            attempts.add(free ? withoutPrice(attempt) : attempt);
        }
        return new Parsed.Value<>(attempts);
    }

    /** A joint that names its resorts knows how it refuses; any other counts as stuck. */
    static @Nullable Refusal refusal(Joint joint) {
        return joint.entry().resorts().isEmpty() ? Refusal.STUCK : null;
    }

    /**
     * What comes new anyway is no loss: single-use fasteners, and where the thread belongs to a part (a stud, a taper, a
     * union), that part. A bolt of its own is lost whatever is renewed around it.
     */
    private boolean costsNothing(Joint joint) {
        JointKind kind = joint.entry().kind();
        boolean ofPart =
                kind == JointKind.NUT || kind == JointKind.TAPER || kind == JointKind.UNION || kind == JointKind.PRESS;
        boolean renewed = false;
        for (int part : joint.joins()) {
            renewed |= renewal.renews(part);
        }
        return renewal.fastenerBack(joint).singleUse() || ofPart && renewed;
    }

    private static Attempt withoutPrice(Attempt one) {
        return new Attempt(
                one.id(),
                one.minutes(),
                one.chance(),
                one.breakChance(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                one.when(),
                one.hazards());
    }
}
