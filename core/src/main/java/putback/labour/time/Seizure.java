package putback.labour.time;

import java.util.List;
import putback.labour.seized.Row;
import putback.labour.seized.Try;

/**
 * What a step may take on top, when its fastener does not move.
 *
 * @param chance that it is seized, 0 to 1
 * @param outcomes what then may happen, their chances together 1; empty for nothing
 */
public record Seizure(double chance, List<Outcome> outcomes) {
    public static final Seizure NONE = new Seizure(0, List.of());

    public Seizure {
        outcomes = List.copyOf(outcomes);
    }

    /**
     * @param chance 0 to 1, once the fastener is seized
     */
    public record Outcome(double chance, Lognormal extra) {}

    /** One kind of delay. */
    public static Seizure of(double chance, Lognormal extra) {
        return new Seizure(chance, List.of(new Outcome(1, extra)));
    }

    /**
     * The delay of trying a row until one works, or to its end.
     *
     * @param spread standard deviation of the logarithm of the whole delay
     */
    public static Seizure of(double chance, Row row, double spread) {
        List<Outcome> outcomes = new java.util.ArrayList<>();
        List<Try> tries = row.tries();
        for (int i = 0; i < tries.size(); i++) {
            double reached = tries.get(i).reached().doubleValue();
            double after = i + 1 < tries.size() ? tries.get(i + 1).reached().doubleValue() : 0;
            outcomes.add(new Outcome(
                    reached - after,
                    new Lognormal(tries.get(i).elapsed().decimal().doubleValue(), spread)));
        }
        return outcomes.isEmpty() ? NONE : new Seizure(chance, outcomes);
    }

    boolean isPossible() {
        return chance > 0 && !outcomes.isEmpty();
    }

    /** Minutes. */
    double mean() {
        double mean = 0;
        for (Outcome one : outcomes) {
            mean += one.chance() * one.extra().mean();
        }
        return chance * mean;
    }

    /** Square minutes. */
    double variance() {
        double square = 0;
        for (Outcome one : outcomes) {
            square += one.chance() * one.extra().meanSquare();
        }
        return chance * square - mean() * mean();
    }

    /** A width that a long tail does not blow up, squared. */
    double squareWidth() {
        double square = 0;
        for (Outcome one : outcomes) {
            double width = one.extra().width();
            double median = one.extra().medianMinutes();
            square += one.chance() * (width * width + (1 - chance) * median * median);
        }
        return chance * square;
    }
}
