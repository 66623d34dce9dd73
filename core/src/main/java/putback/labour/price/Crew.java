package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import putback.labour.time.Dice;
import putback.labour.time.DrawnTimes;
import putback.labour.time.Lognormal;
import putback.labour.time.Seizure;
import putback.labour.time.StepTime;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.quantity.Parsed;
import putback.sheet.Joint;
import putback.sheet.Side;
import putback.sheet.Station;

/**
 * How long a car stands when several people work on it, by drawing jobs. Each side of the car is one person's, who keeps
 * the plan's order there; what belongs to no side, each change of height and each jack under a common part waits for all
 * and is done once; the engine bay, the boot, the cabin and the bench have room for one. So more than two people finish
 * no sooner than two. Set-ups are those of one person, so the times are rather too long than too short.
 */
public final class Crew {
    private static final int JOBS = 40_000;

    /** One stretch of work: a share of a draw, and where it is done. */
    private record Stint(int draw, double share, Side side, int place) {}

    private final List<StepTime> draws = new ArrayList<>();
    private final List<Stint> stints = new ArrayList<>();
    private final Map<String, Integer> byKey = new HashMap<>();

    private Crew() {}

    /**
     * Draws 40,000 jobs.
     *
     * @param hands how many people, 2 or more
     * @param seed for the draws
     */
    public static Parsed<DrawnTimes> times(Plan plan, Beliefs beliefs, BigDecimal ratePerHour, int hands, long seed) {
        if (hands < 2) {
            return new Parsed.Refused<>(hands + " pairs of hands are not several; one is added up exactly");
        }
        Parsed<List<Stuck>> stuck = StuckJoints.of(plan, beliefs, ratePerHour);
        if (!(stuck instanceof Parsed.Value<List<Stuck>> seized)) {
            return new Parsed.Refused<>(stuck.refusal());
        }
        Crew crew = new Crew();
        crew.work(plan, beliefs.own(), seized.value());
        return new Parsed.Value<>(crew.draw(plan.assembly().sheet().times().common(), seed));
    }

    private void work(Plan plan, OwnFigures own, List<Stuck> stuck) {
        Map<String, Double> sums = new HashMap<>();
        for (Step step : plan.steps()) {
            sums.merge(key(step), minutes(step), Double::sum);
        }
        Map<Integer, List<Stuck>> byJoint = new HashMap<>();
        for (Stuck one : stuck) {
            byJoint.computeIfAbsent(one.joint().index(), index -> new ArrayList<>())
                    .add(one);
        }
        double usual = plan.assembly().sheet().times().spread();
        for (Step step : plan.steps()) {
            Side side = side(step);
            int place = place(step);
            double sum = sums.getOrDefault(key(step), 0.0);
            if (minutes(step) > 0) {
                add(index(key(step), time(step, sum, usual, own)), minutes(step) / sum, side, place);
            }
            if (!step.setup().isZero()) {
                double setup = step.setup().decimal().doubleValue();
                add(index("setup " + step.number(), new Lognormal(setup, usual)), 1, side, place);
            }
            Joint joint = step.joint();
            if (joint != null && step.act() == Act.UNDO) {
                delays(byJoint.getOrDefault(joint.index(), List.of()), side, place);
            }
        }
    }

    private void delays(List<Stuck> stuck, Side side, int place) {
        for (Stuck one : stuck) {
            for (int i = 0; i < one.count(); i++) {
                draws.add(new StepTime(one.joint().id(), new Lognormal(0, 0), one.seizure()));
                add(draws.size() - 1, 1, side, place);
            }
        }
    }

    private void add(int draw, double share, Side side, int place) {
        stints.add(new Stint(draw, share, side, place));
    }

    private int index(String key, Lognormal time) {
        return byKey.computeIfAbsent(key, unknown -> {
            draws.add(new StepTime(key, time, Seizure.NONE));
            return draws.size() - 1;
        });
    }

    /** Steps of one key share one draw: the opening of a joint, its closing; any other step has its own. */
    private static String key(Step step) {
        Joint joint = step.joint();
        if (joint != null) {
            switch (step.act()) {
                case UNDO, BREAK_LOOSE -> {
                    return "open " + joint.id();
                }
                case START, RUN_DOWN, TIGHTEN -> {
                    return "close " + joint.id();
                }
                default -> {}
            }
        }
        return "step " + step.number();
    }

    private static Lognormal time(Step step, double sum, double usual, OwnFigures own) {
        Joint joint = step.joint();
        String key = key(step);
        if (joint == null || key.startsWith("step")) {
            return new Lognormal(sum, usual);
        }
        return own.time(
                joint, key.startsWith("open"), new Lognormal(sum, joint.entry().spread()));
    }

    private static double minutes(Step step) {
        return step.minutes().decimal().doubleValue();
    }

    /** Whose step it is; nobody's alone where all have to wait for it. */
    private static Side side(Step step) {
        boolean all = step.act() == Act.HEIGHT || step.act() == Act.LET_DOWN || step.act() == Act.JACK_UP;
        boolean common = step.part() != null && step.part().side() == Side.NONE;
        return all || common ? Side.NONE : step.side();
    }

    /** Places with room for one, from 0; -1 for those that each side has. */
    private static int place(Step step) {
        Station station = step.station();
        return station == null || station == Station.WHEEL_WELL || station == Station.UNDERNEATH
                ? -1
                : station.ordinal();
    }

    private DrawnTimes draw(double common, long seed) {
        Dice dice = new Dice(seed);
        double[] jobs = new double[JOBS];
        double[] drawn = new double[draws.size()];
        double[] free = new double[Station.values().length];
        for (int job = 0; job < JOBS; job++) {
            double factor = dice.factor(common);
            for (int i = 0; i < drawn.length; i++) {
                drawn[i] = dice.draw(draws.get(i));
            }
            Arrays.fill(free, 0);
            jobs[job] = factor * span(drawn, free);
        }
        return new DrawnTimes(jobs);
    }

    private double span(double[] drawn, double[] free) {
        double left = 0;
        double right = 0;
        for (Stint stint : stints) {
            double start =
                    switch (stint.side) {
                        case LEFT -> left;
                        case RIGHT -> right;
                        case NONE -> Math.max(left, right);
                    };
            if (stint.place >= 0) {
                start = Math.max(start, free[stint.place]);
            }
            double end = start + stint.share * drawn[stint.draw];
            if (stint.place >= 0) {
                free[stint.place] = end;
            }
            left = stint.side == Side.RIGHT ? left : end;
            right = stint.side == Side.LEFT ? right : end;
        }
        return Math.max(left, right);
    }
}
