package putback.labour.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import putback.labour.learnt.ChanceLearnt;
import putback.labour.learnt.TimeLearnt;
import putback.labour.seized.Attempt;
import putback.labour.seized.RustGrade;
import putback.labour.time.JobTime;
import putback.labour.time.Lognormal;
import putback.quantity.Minutes;
import putback.quantity.Parsed;
import putback.sheet.Joint;

/**
 * What a garage has seen itself: how long joints and resorts took it, how many fasteners were seized, which resorts
 * worked. Each is added to what is assumed, which counts like a few cases; where nothing was seen the assumption stands as
 * it is.
 */
public final class OwnFigures {
    /** Nothing was seen. */
    public static final OwnFigures NONE = new OwnFigures(List.of());

    /** What is assumed about a time counts like so many jobs (judgement). */
    public static final double TIMES_ASSUMED = 4;

    /** What is assumed about a chance counts like so many cases (judgement). */
    public static final double CASES_ASSUMED = 10;

    private static final String RESORT = "resort ";
    private static final double SHAPE = 3;
    private static final double LEAST_SPREAD = 0.05;
    private static final double SURE = 0.01;

    private final Map<String, List<Double>> minutes = new TreeMap<>();
    private final Map<String, Count> counts = new TreeMap<>();

    /** How many were like it, of how many. */
    record Count(int seen, int of) {
        static final Count NONE = new Count(0, 0);

        Count plus(int moreSeen, int moreOf) {
            return new Count(seen + moreSeen, of + moreOf);
        }
    }

    public OwnFigures(List<Observed> all) {
        for (Observed one : all) {
            if (one instanceof Observed.Took took) {
                note("joint " + took.joint() + (took.opening() ? " open" : " close"), took.minutes());
            } else if (one instanceof Observed.Rusted rusted) {
                count(seizedKey(rusted.joint(), rusted.grade()), rusted.seized(), rusted.of());
            } else if (one instanceof Observed.Tried tried) {
                count(RESORT + tried.resort(), tried.worked() ? 1 : 0, 1);
                if (tried.minutes() > 0) {
                    note(RESORT + tried.resort(), tried.minutes());
                }
            }
        }
    }

    /** Whether anything was seen, of whatever car. */
    public boolean hasAny() {
        return !minutes.isEmpty() || !counts.isEmpty();
    }

    private void note(String key, double one) {
        minutes.computeIfAbsent(key, unknown -> new ArrayList<>()).add(one);
    }

    private void count(String key, int seen, int of) {
        counts.merge(key, Count.NONE.plus(seen, of), (before, now) -> before.plus(now.seen, now.of));
    }

    private static String seizedKey(String joint, RustGrade grade) {
        return "joint " + joint + " seized at " + grade.number();
    }

    /** How often the joint's opening or closing was timed. */
    int timed(Joint joint, boolean opening) {
        return seen(key(joint, opening)).size();
    }

    /** How many of its fasteners were looked at, at this grade, and how many were seized. */
    Count seized(Joint joint, RustGrade grade) {
        return counts.getOrDefault(seizedKey(joint.entry().id(), grade), Count.NONE);
    }

    /** How often the resort was tried, and how often it worked. */
    Count tried(String resort) {
        return counts.getOrDefault(RESORT + resort, Count.NONE);
    }

    /** How often each resort was tried that was ever tried, by its id. */
    public Map<String, Integer> tries() {
        Map<String, Integer> tries = new TreeMap<>();
        counts.forEach((key, count) -> {
            if (key.startsWith(RESORT)) {
                tries.put(key.substring(RESORT.length()), count.of);
            }
        });
        return tries;
    }

    /** How often the clock was looked at while it was tried. */
    int timedResort(String resort) {
        return seen(RESORT + resort).size();
    }

    private static String key(Joint joint, boolean opening) {
        return "joint " + joint.entry().id() + (opening ? " open" : " close");
    }

    private List<Double> seen(String key) {
        return minutes.getOrDefault(key, List.of());
    }

    /** The time of opening or closing a joint, after what was seen. */
    Lognormal time(Joint joint, boolean opening, Lognormal assumed) {
        return after(assumed, seen(key(joint, opening)));
    }

    /** Chance that one certain fastener is seized, after what was seen; 0 to 1. */
    double seizedEach(Joint joint, RustGrade grade, double assumed) {
        return after(assumed, seized(joint, grade));
    }

    /** The resort with its chance and minutes after what was seen. One that is sure stays sure until it fails. */
    Attempt tried(Attempt assumed) {
        Count count = tried(assumed.id());
        if (count.of == 0) {
            return assumed;
        }
        boolean sure = assumed.chance().compareTo(BigDecimal.ONE) == 0 && count.seen == count.of;
        Lognormal time =
                after(new Lognormal(assumed.minutes().decimal().doubleValue(), 0.5), seen(RESORT + assumed.id()));
        return new Attempt(
                assumed.id(),
                Minutes.of(BigDecimal.valueOf(time.medianMinutes()).setScale(3, RoundingMode.HALF_UP)),
                sure
                        ? BigDecimal.ONE
                        : BigDecimal.valueOf(after(assumed.chance().doubleValue(), count))
                                .setScale(4, RoundingMode.HALF_UP),
                assumed.breakChance(),
                assumed.breakPrice(),
                assumed.scraps(),
                assumed.when(),
                assumed.hazards());
    }

    private static Lognormal after(Lognormal assumed, List<Double> seen) {
        double spread = Math.max(LEAST_SPREAD, assumed.spread());
        if (seen.isEmpty()
                || !(TimeLearnt.of(assumed.medianMinutes(), TIMES_ASSUMED, SHAPE, spread * spread * (SHAPE - 1))
                        instanceof Parsed.Value<TimeLearnt> before)
                || !(before.value().after(seen) instanceof Parsed.Value<TimeLearnt> learnt)) {
            return assumed;
        }
        return new Lognormal(
                learnt.value().medianMinutes(),
                Math.min(JobTime.WIDEST, learnt.value().spread()));
    }

    private static double after(double assumed, Count count) {
        double believed = Math.min(1 - SURE, Math.max(SURE, assumed));
        return count.of > 0
                        && ChanceLearnt.of(CASES_ASSUMED * believed, CASES_ASSUMED * (1 - believed))
                                instanceof Parsed.Value<ChanceLearnt> before
                        && before.value().after(count.seen, count.of) instanceof Parsed.Value<ChanceLearnt> learnt
                ? learnt.value().mean()
                : assumed;
    }
}
