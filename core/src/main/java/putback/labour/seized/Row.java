package putback.labour.seized;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import putback.quantity.Minutes;

/**
 * What to try one after the other, until one works.
 *
 * @param tries in order
 * @param leftOut what is not tried, and why
 * @param expectedMinutes spent on average
 * @param expectedCost time at the rate, damage and scrap, on average; not rounded
 * @param p90Minutes in nine cases of ten no more than this is spent
 * @param leftChance that none of them works, 0 to 1
 * @param nearby what must not be hurt
 */
public record Row(
        List<Try> tries,
        List<LeftOut> leftOut,
        BigDecimal expectedMinutes,
        BigDecimal expectedCost,
        Minutes p90Minutes,
        BigDecimal leftChance,
        List<Nearby> nearby) {
    public Row {
        tries = List.copyOf(tries);
        leftOut = List.copyOf(leftOut);
        nearby = List.copyOf(nearby);
    }

    /** Ids of what is tried although nobody said, and no word tells, what it does to what is near; none where nothing is. */
    public List<String> unknownHazards() {
        List<String> unknown = new ArrayList<>();
        for (Try one : tries) {
            String id = one.attempt().id();
            if (!nearby.isEmpty() && one.attempt().hazards().isEmpty() && !UsualHazards.isHarmless(id)) {
                unknown.add(id);
            }
        }
        return List.copyOf(unknown);
    }

    /** Tries that bring flame, heat, sparks or blows: somebody has to look before them, whatever was named. */
    public List<String> hazardous() {
        List<String> hazardous = new ArrayList<>();
        for (Try one : tries) {
            if (!one.attempt().hazards().isEmpty()) {
                hazardous.add(one.attempt().id());
            }
        }
        return List.copyOf(hazardous);
    }

    /** What nobody has named as near, and the tries would hurt if it were; the whole list where nobody named anything. */
    public List<Nearby> notNamed() {
        List<Nearby> notNamed = new ArrayList<>();
        for (Nearby one : Nearby.values()) {
            if (!nearby.contains(one)
                    && tries.stream().anyMatch(tried -> tried.attempt().hurts(one))) {
                notNamed.add(one);
            }
        }
        return List.copyOf(notNamed);
    }

    /** Whether the last of them always works. */
    public boolean isCertain() {
        return leftChance.signum() == 0;
    }
}
