package putback.labour.time;

import java.util.SplittableRandom;

/** Draws times, the same ones for the same seed. */
public final class Dice {
    private final SplittableRandom random;

    public Dice(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Minutes of one step, its delay included. */
    public double draw(StepTime step) {
        return draw(step.time()) + delay(step.seizure());
    }

    /** A factor with median 1. */
    public double factor(double spread) {
        return spread == 0 ? 1 : Math.exp(spread * random.nextGaussian());
    }

    private double draw(Lognormal time) {
        return time.isFixed() ? time.medianMinutes() : time.medianMinutes() * factor(time.spread());
    }

    private double delay(Seizure seizure) {
        if (!seizure.isPossible() || random.nextDouble() >= seizure.chance()) {
            return 0;
        }
        double left = random.nextDouble();
        for (Seizure.Outcome outcome : seizure.outcomes()) {
            left -= outcome.chance();
            if (left < 0) {
                return draw(outcome.extra());
            }
        }
        return draw(seizure.outcomes().get(seizure.outcomes().size() - 1).extra());
    }
}
